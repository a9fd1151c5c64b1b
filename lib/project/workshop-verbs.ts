/** Verbs that start an action in the workshop. One that is missing may be added here. */
export const workshopVerbs: ReadonlySet<string> = new Set(
  `add align allow anchor apply arrange ask assemble attach backstitch balance bend bind blunt bring
  brush build buy carry centre chalk check choose clamp clean clear clip close coat collect colour
  compare connect copy count cover cut dab decide draw drill drop dry ease empty feed fetch fill find
  finish fit fix flatten flip fold follow free gather get give glue go grip guide hammer hand hang
  have hem hold insert iron join keep knot label lay leave lengthen let level lift line list load
  lock loosen lower make mark match measure mend mix move nail notch open pack paint paste pin pivot
  place plan plane position pour prepare press prick print pull punch push put raise reach read
  remove repeat replace rest rip roll round rub run sand saw score screw seal see select separate set
  sew shake shape sharpen shift shorten show sketch slice slide slip slit smooth snip soak sort
  space split spray spread square squash squeeze stack stand staple start stay steam stitch stop
  store stretch strip stuff support sweep swing switch tack take tape tear test thread tie tighten
  tilt trace transfer treat trim try tuck turn twist undo unfold unpick unplug unroll untie use
  vacuum wait walk warm wash watch wear weigh wet whip wind wipe work wrap write zip`.split(/\s+/),
);

/** Words that may stand before the verb of an action. */
export const leadingWords: ReadonlySet<string> = new Set(
  `again always carefully finally first firmly gently lightly loosely next now only slowly then
  please lastly second third neatly tightly`.split(/\s+/),
);

/** Words that open a clause which says when or why; the action follows its comma. */
export const openingWords: ReadonlySet<string> = new Set(
  "after as at before by for from if in on once to until when where while with without".split(" "),
);
