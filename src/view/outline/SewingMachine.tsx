/** An old domestic sewing machine from the front, a little from above; 320 by 200 units. */
export function SewingMachine() {
  return (
    <g class="drawn">
      {/* Bed: its top, and its front edge on small feet. */}
      <path d="M36 140 H286 L302 160 H18 Z" />
      <path d="M18 160 H302 V176 Q302 180 298 180 H22 Q18 180 18 176 Z" />
      <path d="M34 180 v6 h14 v-6 M272 180 v6 h14 v-6" />
      {/* Where the bed comes away, on machines on which it does. */}
      <path class="faint" d="M70 140 L62 160 V180" />
      {/* Head, arm and pillar in one piece. */}
      <path d="M266 148 V74 Q266 38 230 38 H86 Q66 38 66 58 V110 H96 V84 Q96 78 104 78 H202 Q222 78 222 98 V140 L216 148 Z" />
      {/* Faceplate, and the tension's disc on it. */}
      <path class="faint" d="M72 52 V104 H90 V52 Q81 44 72 52 Z" />
      <circle class="faint" cx="112" cy="62" r="6" />
      {/* Handwheel, seen from its edge, and the belt's groove. */}
      <path d="M266 56 H274 M266 68 H274" />
      <rect x="274" y="34" width="16" height="56" rx="7" />
      <path class="faint" d="M282 36 V88" />
      {/* Spool pin. */}
      <path class="faint" d="M210 38 V24 M204 38 h12" />
      {/* Needle bar with its needle, presser bar with its foot. */}
      <path d="M77 110 V128 M77 128 V149" />
      <path d="M90 110 V138 M84 144 L90 138 L90 144 M80 146 H98" />
      {/* Needle plate with the teeth, and the slide plate beside it. */}
      <ellipse cx="84" cy="150" rx="19" ry="6" />
      <path class="faint" d="M78 152 h3 M84 152 h3 M90 152 h3" />
      <path d="M36 144 H58 L52 157 H25 Z" />
    </g>
  );
}
