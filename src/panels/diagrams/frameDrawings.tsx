/** A frame seen from the side of the comb. */
export const FrameFront = () => (
  <>
    <path className="w1 comb" d="M29 21h62v45H29z" />
    <path className="w2" d="M22 17v55h76V17M29 21v45M91 21v45M22 66h76" />
    <path className="w3" d="M8 12h104v5H98v4H22v-4H8z" />
  </>
)

/** A split frame: two halves that meet under a middle bar. */
export const FrameSplit = () => (
  <>
    <path className="w1 comb" d="M29 21h62v16H29zM29 47h62v19H29z" />
    <path className="w2" d="M22 17v55h76V17M29 21v45M91 21v45M22 66h76M22 37h76M22 47h76" />
    <path className="w3" d="M8 12h104v5H98v4H22v-4H8zM22 42h76" />
  </>
)

const END = 'M-11 12h22v8h-22zM-18 20h36v20l-8 6v24h-20V46l-8-6zM-7 70h14v6h-14z'

/** Two frames seen from their ends, shoulder to shoulder. */
export const FrameEnds = () => (
  <>
    <path className="w2" d={END} transform="translate(42 0)" />
    <path className="w2" d={END} transform="translate(78 0)" />
    <path className="w1 axis" d="M42 4v78M78 4v78" />
  </>
)
