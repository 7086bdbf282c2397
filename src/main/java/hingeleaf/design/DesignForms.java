package hingeleaf.design;

import hingeleaf.measure.Unit;
import java.util.List;

/**
 * The forms of structures that a design may use, which this package does not know by itself.
 *
 * @param bases what a card can be built on, at least one
 * @param mechanisms what can be added to it
 */
public record DesignForms(List<Form> bases, List<Form> mechanisms) {
  public DesignForms {
    bases = List.copyOf(bases);
    mechanisms = List.copyOf(mechanisms);
  }

  private static final int MOST = 400;

  /** The whole design file as one form. */
  public Form document() {
    return Form.of(
        "design",
        "the design",
        "the design of one card",
        FormField.whole("hingeleaf", 1, 1, "the format of this file").required().example("1"),
        FormField.text("title", 100, "printed on the plan")
            .usually("Untitled card")
            .example("My card"),
        unit("how bare numbers are read and the plan is written"),
        FormField.of("base", oneOf("a base", bases), "what the card is built on").required(),
        FormField.list("mechanisms", oneOf("a mechanism", mechanisms), 0, MOST, "what moves")
            .usually("[]"),
        attached("mats", Attachments.MAT),
        attached("cut-outs", Attachments.CUT_OUT),
        attached("words", Attachments.WORDS),
        attached("windows", Attachments.WINDOW),
        FormField.group("message", Attachments.MESSAGE, Attachments.MESSAGE.says()));
  }

  static FormField unit(String says) {
    return FormField.word("unit", says, "mm: millimetres", "cm: centimetres", "in: inches")
        .usually(Unit.MM.word())
        .example("mm", "in");
  }

  private static FormField attached(String key, Form form) {
    return FormField.forms(key, form, 0, MOST, form.says()).usually("[]");
  }

  private static FieldKind.OneOf oneOf(String what, List<Form> forms) {
    return new FieldKind.OneOf(what, forms.stream().map(FieldKind.Variant::of).toList(), List.of());
  }
}
