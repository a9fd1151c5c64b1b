/** "2", "4 and 5", "7 to 13", "1, 3 and 6". */
export function listNumbers(numbers: readonly number[]): string {
  const [first = 0, ...rest] = numbers;
  const last = rest.at(-1) ?? first;
  if (rest.length === 0) return `${first}`;
  if (rest.length > 1 && last - first === rest.length) return `${first} to ${last}`;
  return `${numbers.slice(0, -1).join(", ")} and ${last}`;
}
