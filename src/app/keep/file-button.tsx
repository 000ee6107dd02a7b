import { useRef } from 'preact/hooks';

interface FileButtonProps {
  label: string;
  accept: string;
  isBusy: boolean;
  onFile: (file: File) => void;
}

/** A button that lets the person choose one file; the same file can be chosen again. */
export function FileButton({ label, accept, isBusy, onFile }: FileButtonProps) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" class="button" disabled={isBusy} onClick={() => input.current?.click()}>
        {label}
      </button>
      <input
        ref={input}
        class="unseen"
        type="file"
        accept={accept}
        tabIndex={-1}
        aria-label={label}
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          event.currentTarget.value = '';
          if (file) onFile(file);
        }}
      />
    </>
  );
}
