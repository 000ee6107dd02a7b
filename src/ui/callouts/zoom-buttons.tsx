import { type IconName, icon } from '../../drawing/icons.ts';
import { calloutWords } from '../../text/callouts.ts';
import { DrawingView } from '../drawing-view.tsx';
import { MOST_ZOOM } from './view.ts';

interface ZoomButtonsProps {
  zoom: number;
  moving: boolean;
  onZoom: (factor: number) => void;
  onWhole: () => void;
  onMoving: (moving: boolean) => void;
}

const FACTOR = 1.6;

/** What two fingers do, for one finger. */
export function ZoomButtons({ zoom, moving, onZoom, onWhole, onMoving }: ZoomButtonsProps) {
  const near = zoom > 1;
  return (
    <div class="callout-zoom">
      {near && <StageButton name="whole" label={calloutWords.whole} onPress={onWhole} />}
      {near && <StageButton name="move" label={calloutWords.move} pressed={moving} onPress={() => onMoving(!moving)} />}
      {near && <StageButton name="minus" label={calloutWords.smaller} onPress={() => onZoom(1 / FACTOR)} />}
      <StageButton
        name="plus"
        label={calloutWords.larger}
        disabled={zoom >= MOST_ZOOM}
        onPress={() => onZoom(FACTOR)}
      />
    </div>
  );
}

interface StageButtonProps {
  name: IconName;
  label: string;
  onPress: () => void;
  pressed?: boolean;
  disabled?: boolean;
}

function StageButton({ name, label, onPress, pressed, disabled = false }: StageButtonProps) {
  return (
    <button
      type="button"
      class="button"
      aria-label={label}
      title={label}
      {...(pressed !== undefined && { 'aria-pressed': pressed })}
      disabled={disabled}
      onClick={onPress}
    >
      <DrawingView drawing={icon(name)} />
    </button>
  );
}
