/** The words at the foot of a visit; a small flat cone over the one a person is at. */
import type { SectionRowProps } from "./props-frame.js";

export function SectionRow({ label, sections }: SectionRowProps) {
  return (
    <nav class="sections" aria-label={label}>
      {sections.map((section) => (
        <a key={section.id} href={section.href} aria-current={section.here ? "page" : undefined}>
          {section.here && (
            <svg width="56" height="10" viewBox="0 0 56 10" aria-hidden="true">
              <path d="M23 0H33L56 10H0Z" />
            </svg>
          )}
          {section.words}
        </a>
      ))}
    </nav>
  );
}
