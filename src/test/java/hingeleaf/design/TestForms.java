package hingeleaf.design;

import java.util.List;

/** A small base and a small mechanism to try the document with; no structure of the tool. */
final class TestForms {
  static final Form FRAME =
      Form.of(
          "frames",
          "a frame",
          "a layer with an opening",
          FormField.name("what you call it").required(),
          ShapeForm.field("aperture", "its opening").required());

  static final Form STACK =
      Form.of(
          "stacked-frames",
          "the stack",
          "frames one before the other",
          FormField.length("width", Range.positive(1000), "of a panel")
              .required()
              .example("150", "6"),
          FormField.length("height", Range.positive(1000), "of a panel")
              .required()
              .example("150", "6"),
          FormField.reference("stock", "a paper of the bench", "what it is cut from")
              .required()
              .example("white-300"),
          FormField.lengths("side", Range.positive(300), "depth of a stage")
              .usually("12 mm", "1/2 in")
              .example("12", "1/2"),
          FormField.word("tab", "where its tabs are", "in: folded in", "out: folded out")
              .usually("in"),
          FormField.yesNo("glued", "whether it comes glued").usually("yes"),
          FormField.forms("frames", FRAME, 1, 12, "from the back forwards")
              .required()
              .example(
                  "- {name: near, aperture: {circle: 90}}",
                  "- {name: near, aperture: {circle: 3 1/2}}"));

  static final Form PLAIN =
      Form.of(
          "single-leaf",
          "the leaf",
          "one leaf",
          FormField.length("width", Range.positive(1000), "of the leaf").required());

  static final Form DOOR =
      Form.of(
          "door",
          "a door",
          "a flap that swings",
          FormField.name("what you call it").required(),
          FormField.reference("on", "a panel", "what it is cut in").required(),
          FormField.word("hinge", "which edge stays", "left", "right").usually("left"));

  static final DesignForms ALL = new DesignForms(List.of(STACK, PLAIN), List.of(DOOR));

  static final String FAIR_WINDS =
      """
      hingeleaf: 1
      title: Fair winds ⛵            # an emoji: one sign to a reader, two code units
      unit: mm                       # how bare numbers are read
      base:
        stacked-frames:
          width: 150
          height: 150
          stock: white-300
          side: [12, 18 mm, 1/2 in]
          frames:                    # from the back forwards
            - {name: far, aperture: {circle: 90}}
            - {name: middle, aperture: {rect: [80, 60], at: [0, -5]}}
            - name: near
              aperture:
                square: 130
      mechanisms:
        - door: {name: shutter, on: middle}
      mats:
        - {name: sea, on: back, stock: kraft-220}
      cut-outs:
        - {name: boat, on: back, at: [0, -8], outline: {svg: boat.svg, width: 55}, stock: navy-220, raised-by: 2, seen: all}
      words:
        - {text: "Fair winds", on: back, at: [0, 30], height: 9}
      """;

  private TestForms() {}
}
