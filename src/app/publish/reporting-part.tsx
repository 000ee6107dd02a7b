import { publishWords } from '../../text/publish.ts';

const say = publishWords.reporting;

/** Where a dangerous product can be reported: the kinds of places, which differ by country. */
export function ReportingPart() {
  return (
    <section class="stack">
      <h2>{say.title}</h2>
      <p>{say.law}</p>
      <ul class="stack">
        {say.places.map(({ who, what }) => (
          <li key={who}>
            <strong>{who}</strong> {what}
          </li>
        ))}
      </ul>
      <p>{say.how}</p>
    </section>
  );
}
