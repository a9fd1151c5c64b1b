import safety from "../../shared/safety/fire.json" with { type: "json" };

/** Reviewed wording of one country: its fire rule, what it asks of those who supply, chemicals. */
export type CountryRule = (typeof safety.countries)["US"];

/** The wording for a country of two capitals; the general one where none was reviewed. */
export function countryRule(country: string | null): CountryRule {
  const { countries } = safety;
  switch (country) {
    case "US":
      return countries.US;
    case "GB":
      return countries.GB;
    case null:
      return countries.other;
  }
  return safety.europeanUnion.includes(country) ? countries.EU : countries.other;
}
