package hingeleaf.paper.template;

import hingeleaf.paper.SeenPiece;
import java.util.List;

/** One way round in which a piece may lie on a page, with what stands above it. */
record Way(Template template, SeenPiece piece, Caption caption) {
  /** Upright and turned by a quarter; worked out once, however many pages are tried. */
  static List<Way> of(Template template, TemplateStyle style) {
    SeenPiece upright = SeenPiece.of(template.piece(), style.seen(), template.glue());
    SeenPiece turned = upright.turned();
    return List.of(
        new Way(template, upright, Caption.of(template, upright, style)),
        new Way(template, turned, Caption.of(template, turned, style)));
  }

  double height() {
    return caption.height() + piece.height();
  }
}
