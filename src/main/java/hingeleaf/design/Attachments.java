package hingeleaf.design;

/** Forms of what every card may carry, whatever its structure: mats, cut-outs, words, windows. */
public final class Attachments {
  private static final double LARGEST = 1000;

  /** The key by which a part asks for an embossing folder. */
  public static final String EMBOSS = "emboss";

  private static final String[] FACES = {
    "front: the face that looks at the reader", "back: the face that looks away"
  };
  private static final String[] SEEN = {
    "all: the whole of it must show, seen straight on",
    "some: a part of it may be covered",
    "hidden: nothing of it may show",
    "any: it does not matter"
  };

  /** A panel of card glued flat on a face. */
  public static final Form MAT =
      Form.of(
          "mats",
          "a mat",
          "a panel of another card glued on a face",
          FormField.name("what you call it").required().example("sea"),
          on().required().example("back"),
          face("front"),
          stock().example("kraft-220"),
          FormField.length("width", Range.positive(LARGEST), "left out: as wide as fits"),
          FormField.length("height", Range.positive(LARGEST), "left out: as high as fits"),
          at(),
          ShapeForm.field(
              "aperture", "an opening in the mat; left out: the panel's, a border wider"),
          FormField.length(
                  "border",
                  Range.from(0, 100),
                  "how much of the panel shows round the mat, where its size is left out")
              .usually("1 mm", "1/16 in"),
          raisedBy("0 mm"),
          emboss(),
          seen("any"));

  /** A loose ornament. */
  public static final Form CUT_OUT =
      Form.of(
          "cut-outs",
          "a cut-out",
          "a loose ornament glued on a panel or a window",
          FormField.name("what you call it").required().example("boat"),
          on().required().example("back"),
          face("front"),
          at(),
          ShapeForm.field("outline", "its shape")
              .required()
              .example("{circle: 30}", "{circle: 1 1/4}"),
          stock().example("navy-220"),
          FormField.number("turned", Range.from(-360, 360), "degrees", "turned anticlockwise")
              .usually("0"),
          raisedBy("0 mm"),
          emboss(),
          seen("all"));

  /** A line of lettering. */
  public static final Form WORDS =
      Form.of(
          "words",
          "words",
          "a line of lettering, printed or written",
          FormField.text("text", 200, "what it says").required().example("Fair winds"),
          on().required().example("back"),
          face("front"),
          at(),
          FormField.length("height", Range.positive(200), "height of its capitals")
              .required()
              .example("9", "3/8"),
          FormField.colour("colour", "of the lettering").usually("\"#222222\""),
          FormField.reference(
              "stock", "a paper of the bench", "a strip of this to carry it; left out: the panel"),
          raisedBy("0 mm"),
          seen("all"));

  /** Acetate behind an opening. */
  public static final Form WINDOW =
      Form.of(
          "windows",
          "a window",
          "a clear sheet glued behind an opening",
          FormField.name("what you call it").required().example("pane"),
          on().required().example("near"),
          stock().example("acetate"),
          FormField.length("overlap", Range.from(1, 100), "how far it reaches past the opening")
              .usually("5 mm", "3/16 in"),
          FormField.length(
              "width", Range.positive(LARGEST), "left out: the opening's and its overlap"),
          FormField.length(
              "height", Range.positive(LARGEST), "left out: the opening's and its overlap"));

  /** Where the sender writes. */
  public static final Form MESSAGE =
      Form.of(
          "message",
          "the message panel",
          "a panel to write on",
          on().usually("back"),
          face("back"),
          stock().example("white-300"),
          FormField.length("width", Range.positive(LARGEST), "left out: as wide as fits"),
          FormField.length("height", Range.positive(LARGEST), "left out: as high as fits"),
          at(),
          FormField.length(
                  "border",
                  Range.from(0, 100),
                  "how much of the panel shows round it, where its size is left out")
              .usually("3 mm", "1/8 in"),
          FormField.text("text", 500, "printed on it; left out: blank"));

  private Attachments() {}

  private static FormField on() {
    return FormField.reference("on", "a panel or of a part glued before", "what it is glued on");
  }

  private static FormField face(String usual) {
    return FormField.word("face", "which face of the panel it is on", FACES).usually(usual);
  }

  private static FormField stock() {
    return FormField.reference("stock", "a paper of the bench", "which paper it is cut from")
        .required();
  }

  private static FormField at() {
    return FormField.point(
            "at", LARGEST, "how far right of and above the panel's middle its own middle sits")
        .usually("[0, 0]");
  }

  /** What presses a pattern into a part; every form of a part that can be pressed has it. */
  public static FormField emboss() {
    return FormField.reference(
        EMBOSS, "an embossing folder of the bench", "a pattern pressed into it; left out: plain");
  }

  private static FormField raisedBy(String usual) {
    return FormField.length(
            "raised-by", Range.from(0, 50), "thickness of the foam under it; 0 for glued flat")
        .usually(usual);
  }

  private static FormField seen(String usual) {
    return FormField.word("seen", "how much of it should show", SEEN).usually(usual);
  }
}
