package hingeleaf.design;

import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** JSON Schemas (draft 2020-12) of the files, made from their forms. */
public final class SchemaText {
  private SchemaText() {}

  /** The schema of design files. */
  public static String design(DesignForms forms) {
    return text(forms.document(), "A Hingeleaf design");
  }

  /** The schema of bench files. */
  public static String bench() {
    return text(BenchForm.DOCUMENT, "A Hingeleaf bench");
  }

  private static String text(Form form, String title) {
    ObjectNode schema = new FormSchema().document(form, title);
    DefaultIndenter indent = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent);
    return new JsonMapper().writer().with(printer).writeValueAsString(schema) + "\n";
  }
}
