/** An old typewriter from the front, a little from above; 320 by 200 units. */
export function Typewriter() {
  return (
    <g class="drawn">
      {/* Paper, and the carriage with its knobs and its lever. */}
      <path class="faint" d="M108 38 V12 H212 V38" />
      <rect x="38" y="38" width="244" height="18" rx="5" />
      <path d="M38 42 H26 V52 H38 M282 42 H294 V52 H282" />
      <path d="M46 38 L30 20" />
      {/* Body. */}
      <path d="M66 56 H254 L262 98 L292 178 Q294 186 284 186 H36 Q26 186 28 178 L58 98 Z" />
      <path class="faint" d="M60 104 H260" />
      {/* Spools and the fan of type bars between them. */}
      <circle cx="92" cy="80" r="15" />
      <circle cx="92" cy="80" r="4" />
      <circle cx="228" cy="80" r="15" />
      <circle cx="228" cy="80" r="4" />
      <path d="M128 100 Q160 62 192 100" />
      <path class="faint" d="M136 98 L146 82 M148 98 L154 78 M160 98 V76 M172 98 L166 78 M184 98 L174 82" />
      {/* Four rows of keys, and the long one below. */}
      {[0, 1, 2, 3].map((row) => (
        <g key={row}>
          {[0, 1, 2, 3, 4, 5, 6, 7, 8, 9].map((key) => (
            <circle key={key} cx={79 - row * 4 + key * (18 + row)} cy={116 + row * 15} r="5" />
          ))}
        </g>
      ))}
      <rect x="104" y="172" width="112" height="8" rx="4" />
    </g>
  );
}
