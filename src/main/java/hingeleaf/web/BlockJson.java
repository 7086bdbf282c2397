package hingeleaf.web;

import hingeleaf.paper.book.Block;
import hingeleaf.paper.book.Span;
import hingeleaf.paper.svg.SvgWriter;
import java.util.List;
import java.util.Locale;

/** Blocks of the plan as data: the page sets them in its own type, the words are the plan's. */
final class BlockJson {
  private final JsonOut out;

  private BlockJson(JsonOut out) {
    this.out = out;
  }

  static String text(List<Block> blocks) {
    return JsonOut.object(out -> out.each("blocks", blocks, new BlockJson(out)::block));
  }

  private void block(Block b) {
    if (b instanceof Block.Heading h) {
      out.put("is", "heading").put("level", h.level()).put("text", h.text());
    } else if (b instanceof Block.Paragraph p) {
      out.put("is", "paragraph");
      spans(p);
    } else if (b instanceof Block.Items i) {
      out.put("is", "items");
      out.each("items", i.items(), this::spans);
    } else if (b instanceof Block.Table t) {
      table(t);
    } else if (b instanceof Block.Figure f) {
      out.put("is", "figure").put("caption", f.caption());
      out.put("width", f.drawing().width());
      out.put("drawing", SvgWriter.write(f.drawing(), f.caption()));
    } else {
      nested(b);
    }
  }

  private void nested(Block b) {
    if (b instanceof Block.Pair p) {
      out.put("is", "pair").put("share", p.share());
      out.each("left", p.left(), this::block).each("right", p.right(), this::block);
    } else if (b instanceof Block.Numbered n) {
      out.put("is", "step").put("number", n.number());
      out.each("blocks", n.body(), this::block);
    } else if (b instanceof Block.Caution c) {
      out.put("is", "caution").put("title", c.title());
      spans(c.text());
    } else if (b instanceof Block.Together t) {
      out.put("is", "together");
      out.each("blocks", t.blocks(), this::block);
    } else {
      out.put("is", "gap");
    }
  }

  private void spans(Block.Paragraph p) {
    out.each("spans", p.spans(), this::span);
  }

  private void span(Span s) {
    out.put("text", s.text()).put("voice", s.voice().name().toLowerCase(Locale.ROOT));
  }

  private void table(Block.Table t) {
    out.put("is", "table");
    out.each(
        "columns",
        t.columns(),
        c ->
            out.put("title", c.title())
                .put("number", c.align() != Block.Align.LEFT)
                .put("strong", c.strong()));
    out.list("rows", () -> t.rows().forEach(r -> out.item(() -> r.forEach(out::string))));
  }
}
