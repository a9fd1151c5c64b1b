/**
 * Best densities known for the open irregular sets, per cent.
 *
 * @source Gardeyn, Vanden Berghe and Wauters 2025, arXiv:2509.13329v1, Table 3 (20 min, best of 100
 * runs); dighe1 is a jigsaw that fills its strip by construction
 */
export const knownDensities: Readonly<Record<string, number>> = {
  albano: 89.82,
  blaz: 86.23,
  dighe1: 100,
  fu: 92.41,
  jakobs1: 89.26,
  mao: 86.87,
  shapes0: 69.98,
  shapes1: 76.73,
  swim: 79.83,
  trousers: 92.62,
};
