// Numbers in the words of a refusal: plain millimetres or degrees without noise.

/** Two decimals at most, no trailing noughts. */
export const roundText = (value: number): string => String(Number(value.toFixed(2)));
