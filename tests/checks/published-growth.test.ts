// Whole growth tables, as printed by those who measured: 5th, 50th and 95th percentile of boys, then girls.
import { expect, test } from "vitest";
import statures from "../../shared/tables/stature-for-age.json" with { type: "json" };
import weights from "../../shared/tables/weight-for-age.json" with { type: "json" };

// CDC 2000 stature-for-age, statage.csv, https://www.cdc.gov/growthcharts/, the row half a month after each birthday
// (20 years: the last row, 240 months), in cm
const published = [
  [2, [81.1, 86.9, 92.6], [79.6, 85.4, 91.1]],
  [3, [89.2, 95.3, 101.9], [87.8, 94.2, 100.8]],
  [4, [95.6, 102.5, 109.5], [94.0, 101.0, 108.4]],
  [5, [101.5, 109.2, 116.8], [100.4, 108.0, 116.1]],
  [6, [107.3, 115.7, 123.9], [106.9, 115.0, 123.9]],
  [7, [113.2, 122.0, 131.0], [113.1, 121.8, 131.3]],
  [8, [118.8, 128.1, 137.8], [118.5, 127.8, 137.9]],
  [9, [123.8, 133.7, 144.1], [123.2, 133.1, 143.8]],
  [10, [128.2, 138.8, 149.9], [127.5, 138.2, 149.6]],
  [11, [132.4, 143.7, 155.5], [132.4, 144.3, 156.4]],
  [12, [137.3, 149.3, 161.9], [139.2, 151.5, 163.5]],
  [13, [143.6, 156.4, 169.5], [145.9, 157.3, 168.6]],
  [14, [150.5, 164.1, 177.0], [149.7, 160.5, 171.3]],
  [15, [156.7, 170.1, 182.4], [151.3, 161.9, 172.6]],
  [16, [160.8, 173.6, 185.5], [151.9, 162.6, 173.2]],
  [17, [163.1, 175.3, 187.0], [152.3, 162.9, 173.6]],
  [18, [164.2, 176.2, 187.8], [152.5, 163.1, 173.8]],
  [20, [165.0, 176.8, 188.5], [152.7, 163.3, 174.0]],
] as const;

// CDC 2000 weight-for-age, wtage.csv, the same rows, in kg
const heavy = [
  [2, [10.7, 12.7, 15.3], [10.3, 12.1, 14.7]],
  [3, [12.1, 14.4, 17.5], [11.7, 13.9, 17.4]],
  [4, [13.6, 16.3, 20.3], [13.1, 15.9, 20.4]],
  [5, [15.2, 18.5, 23.5], [14.7, 18.0, 23.8]],
  [6, [16.9, 20.8, 27.0], [16.4, 20.3, 27.4]],
  [7, [18.7, 23.2, 30.9], [18.2, 22.9, 31.5]],
  [8, [20.7, 25.8, 35.3], [20.1, 25.8, 36.2]],
  [9, [22.7, 28.7, 40.4], [22.3, 29.1, 41.8]],
  [10, [24.9, 32.1, 46.2], [24.9, 33.1, 48.2]],
  [12, [30.6, 40.7, 59.3], [31.2, 41.8, 61.6]],
  [14, [38.5, 51.2, 72.7], [37.9, 49.5, 72.4]],
  [16, [47.3, 61.1, 84.3], [43.0, 53.9, 78.1]],
  [18, [53.2, 67.3, 92.0], [45.4, 56.2, 80.8]],
] as const;

const grown = statures.rows.at(-1)?.age ?? 0;

test.each(published.filter(([age]) => age <= grown))(
  "children of %d are as tall as in the CDC's file",
  (age, boys, girls) => {
    const row = statures.rows.find((one) => one.age === age);
    expect(row?.boys).toEqual(boys);
    expect(row?.girls).toEqual(girls);
  },
);

test("every year of the CDC's file up to the last one used is there", () => {
  const ages = published.map(([age]) => age).filter((age) => age <= grown);
  expect(statures.rows.map(({ age }) => age)).toEqual(ages);
  expect(grown).toBeGreaterThanOrEqual(18);
});

test.each(heavy)("children of %d weigh what the CDC's file has", (age, boys, girls) => {
  const row = weights.rows.find((one) => one.age === age);
  expect(row?.boys).toEqual(boys);
  expect(row?.girls).toEqual(girls);
});
