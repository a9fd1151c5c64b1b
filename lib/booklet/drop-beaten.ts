import type { ComparedWay } from "../seams/types.ts";

/**
 * The ways worth offering once each has been laid: the chosen one, and those that no other way equals or
 * betters in every column of the comparison.
 */
export const dropBeaten = (ways: readonly ComparedWay[]): readonly ComparedWay[] =>
  ways.filter(
    (way, i) =>
      way.isChosen ||
      !ways.some((other, j) => {
        const [own, others] = [columnsOf(way), columnsOf(other)];
        const isNoWorse = others.every((value, column) => value <= own[column]!);
        // Of two that are alike in every column the first is kept.
        return other !== way && isNoWorse && (j < i || others.some((value, c) => value < own[c]!));
      }),
  );

/** The columns of the printed comparison, each better the smaller; a way that does not fit the cloth is worst. */
export const columnsOf = ({
  panels,
  seamLength,
  clothLength,
  turnedFaces,
  inwardFolds,
}: ComparedWay): readonly number[] => [
  panels.length,
  Math.round(seamLength),
  clothLength === null ? Infinity : Math.round(clothLength),
  turnedFaces.length,
  inwardFolds,
];
