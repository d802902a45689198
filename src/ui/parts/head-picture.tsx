const cords = {
  left: "M196 380H94Q72 380 72 358V232",
  right: "M224 380H326Q348 380 348 358V232",
};

/** A head seen from above, nose up, headphones on, and the two lanes that come to its ears. */
export const HeadPicture = () => (
  <svg class="head" viewBox="0 0 420 400" aria-hidden="true">
    <defs>
      <pattern
        id="round"
        width="9"
        height="9"
        patternTransform="rotate(38)"
        patternUnits="userSpaceOnUse"
      >
        <path class="hatch" d="M0 0V9" />
      </pattern>
    </defs>
    <ellipse class="halo" cx="210" cy="176" rx="200" ry="168" fill="url(#round)" />
    <path
      class="skull"
      d="M210 42c-8 0-13 8-16 18-50 8-86 52-86 114 0 68 42 120 102 120s102-52 102-120c0-62-36-106-86-114-3-10-8-18-16-18z"
    />
    <g class="sides">
      <path class="lane bed" d={`${cords.left}${cords.right}`} />
      <path class="lane left" d={cords.left} />
      <path class="lane right" d={cords.right} />
      <path class="lane core" d={cords.right} />
      <path class="pulse" d={`${cords.left}${cords.right}`} />
      <path class="cup left" d="M110 118h-26c-32 0-50 26-50 58s18 58 50 58h26z" />
      <path class="cup right" d="M310 118h26c32 0 50 26 50 58s-18 58-50 58h-26z" />
    </g>
  </svg>
);
