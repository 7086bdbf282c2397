package hingeleaf.design;

/** The form of a bench file: what the maker owns and pays. */
public final class BenchForm {
  private static final double LARGEST = 3000;
  private static final int MOST = 500;
  private static final Range MONEY = Range.from(0, 1_000_000);
  private static final Range MINUTES = Range.from(0, 100_000);

  private static final Form TRIMMER =
      Form.of(
          "trimmer",
          "the trimmer",
          "what straight edges are cut on",
          FormField.length("longest", Range.positive(LARGEST), "longest cut").required(),
          FormField.length("marks", Range.positive(100), "from one mark of its ruler to the next")
              .usually("1 mm", "1/16 in"));

  private static final Form SCORING_BOARD =
      Form.of(
          "scoring-board",
          "the scoring board",
          "a board with grooves to score in",
          FormField.length("grooves", Range.positive(100), "from one groove to the next")
              .required(),
          FormField.length("longest", Range.positive(LARGEST), "longest piece that it takes"));

  private static final Form DIE =
      Form.of(
          "dies",
          "a die",
          "a cutting die",
          FormField.named("die", "what you call it").required().example("round-90"),
          FormField.text("label", 100, "what its packet says"),
          FormField.word(
                  "shape",
                  "what it cuts",
                  "circle",
                  "square",
                  "rect",
                  "ellipse",
                  "arch",
                  "rounded",
                  "other")
              .required()
              .example("circle"),
          FormField.size("cut", LARGEST, "the opening that it leaves, measured")
              .required()
              .example("[90, 90]", "[3 1/2, 3 1/2]"),
          FormField.size("drop-out", LARGEST, "what falls out, measured"));

  private static final Form EMBOSSING_FOLDER =
      Form.of(
          "embossing-folders",
          "an embossing folder",
          "presses a pattern into a panel",
          FormField.named("embossing folder", "what you call it").required().example("waves"),
          FormField.size("size", LARGEST, "the patterned part")
              .required()
              .example("[108, 140]", "[4 1/4, 5 1/2]"));

  private static final Form SHEET =
      Form.of(
          "sheets",
          "a sheet",
          "a size in which a paper is bought or lies in the drawer",
          NamedSizes.SHEETS.field("size", LARGEST, "by name, upright, or measured").required(),
          FormField.number("price", MONEY, "", "of one sheet").usually("0"),
          FormField.whole("left", 0, 1_000_000, "how many there are; left out: more can be bought"),
          grain("which way its fibres run"));

  private static final Form STOCK =
      Form.of(
          "stocks",
          "a paper",
          "a paper or clear sheet that pieces are cut from",
          FormField.named("stock", "the word that designs use for it").required(),
          FormField.text("title", 100, "as the plan calls it"),
          FormField.word("kind", "what it is", "card: paper or card", "acetate: clear sheet")
              .usually("card"),
          FormField.number("grammage", Range.from(10, 3000), "g/m2", "weight of a square metre")
              .required(),
          FormField.length("thickness", Range.positive(10), "of one sheet, measured").required(),
          FormField.colour("front", "colour of the good face").usually("\"#ffffff\""),
          FormField.colour("back", "colour of the other face; left out: as the front"),
          FormField.colour("core", "colour that shows at a cut; left out: as the back"),
          grain("which way the fibres of its sheets run"),
          FormField.length(
                  "least-border", Range.from(0, 100), "narrowest strip it bears beside an opening")
              .usually("3 mm", "1/8 in"),
          FormField.forms("sheets", SHEET, 0, MOST, "the sizes you have").usually("[]"));

  private static final Form GLUE =
      Form.of(
          "glues",
          "a glue",
          "a glue or tape",
          FormField.named("glue", "what you call it").required().example("glue-stick"),
          FormField.word("kind", "what it is", "glue", "tape").usually("glue"),
          FormField.length("width", Range.positive(200), "of the tape, or of a line of glue"),
          FormField.number("hold", MINUTES, "minutes", "to be held").usually("0"),
          FormField.number("dry", MINUTES, "minutes", "until dry").usually("0"),
          FormField.number("grams", Range.from(0, 2000), "g/m2", "weight on a square metre")
              .usually("0"));

  private static final Form FOAM =
      Form.of(
          "foams",
          "a foam",
          "foam pads or tape that raise a part",
          FormField.named("foam", "what you call it").required().example("pads-2"),
          FormField.length("thickness", Range.positive(50), "measured")
              .required()
              .example("2", "1/16"),
          FormField.number("price", MONEY, "", "of a hundred square centimetres").usually("0"));

  private static final Form ENVELOPE =
      Form.of(
          "envelopes",
          "an envelope",
          "an envelope that you have",
          FormField.named("envelope", "what you call it").required().example("usual"),
          NamedSizes.ENVELOPES
              .field("size", LARGEST, "by name, or its outer size")
              .required()
              .example("C5", "US-A7"),
          FormField.number("price", MONEY, "", "of one").usually("0"),
          FormField.number("grams", Range.from(0, 1000), "g", "weight of one"));

  /** The whole bench file. */
  public static final Form DOCUMENT =
      Form.of(
          "bench",
          "the bench",
          "what a maker owns and pays",
          FormField.whole("bench", 1, 1, "the format of this file").required().example("1"),
          FormField.text("title", 100, "whose bench it is").usually("My bench").example("My bench"),
          DesignForms.unit("how bare numbers are read"),
          FormField.word(
                  "country",
                  "where you post",
                  "US: United States",
                  "GB: United Kingdom",
                  "DE: Germany",
                  "FR: France",
                  "CA: Canada",
                  "AU: Australia",
                  "IE: Ireland",
                  "other: anywhere else")
              .usually("GB", "US")
              .example("GB", "US"),
          FormField.of("accuracy", accuracy(), "how true your cuts and scores are")
              .usually("average")
              .example("average"),
          FormField.number("hourly-rate", MONEY, "", "what an hour of your work costs")
              .usually("0"),
          FormField.text("money", 8, "the sign or letters of your money").usually("GBP", "USD"),
          FormField.group("trimmer", TRIMMER, TRIMMER.says())
              .example("{longest: 300, marks: 1}", "{longest: 12, marks: 1/16}"),
          FormField.group("scoring-board", SCORING_BOARD, SCORING_BOARD.says())
              .example("{grooves: 5}", "{grooves: 1/8}"),
          FormField.length("machine-width", Range.positive(LARGEST), "of your die-cutting machine"),
          list("dies", DIE),
          list("embossing-folders", EMBOSSING_FOLDER),
          list("stocks", STOCK)
              .example(
                  "- {name: white-300, title: white card 300 g/m2, grammage: 300, thickness: 0.36,"
                      + " sheets: [{size: A4}]}",
                  "- {name: white-110, title: white card 110 lb cover, grammage: 298, thickness:"
                      + " 0.014, sheets: [{size: letter}]}"),
          list("glues", GLUE),
          list("foams", FOAM),
          list("envelopes", ENVELOPE));

  private BenchForm() {}

  private static FormField list(String key, Form form) {
    return FormField.forms(key, form, 0, MOST, form.says()).usually("[]");
  }

  private static FieldKind accuracy() {
    return new FieldKind.WordOr(
        new FieldKind.Word(
            FormField.choosables(
                "careful: half a millimetre", "average: one millimetre", "class: two millimetres")),
        new FieldKind.OneLength(Range.positive(5)));
  }

  private static FormField grain(String says) {
    return FormField.word(
            "grain",
            says,
            "width: along the first size",
            "height: along the second size",
            "any: not known, or of no matter")
        .usually("any");
  }
}
