package hingeleaf.paper.pack;

import hingeleaf.card.Rest;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.pack.Mass;
import hingeleaf.pack.Pack;
import hingeleaf.pack.Postage;
import hingeleaf.paper.book.Block;
import hingeleaf.plan.Leans;
import hingeleaf.post.Decision;
import hingeleaf.post.MadeEnvelope;
import hingeleaf.post.PostClass;
import hingeleaf.post.PostWords;
import hingeleaf.post.Posting;
import hingeleaf.post.Wrap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How the card lies flat, in which envelope it goes, and as what. */
final class PostChapter {
  private static final int MOST_WAYS = 4;

  private final Pack pack;
  private final MakerUnits units;
  private final PostWords words;

  PostChapter(Pack pack) {
    this.pack = pack;
    this.units = pack.inputs().wants().units();
    this.words = new PostWords(units.unit() == Unit.IN);
  }

  void add(List<Block> all) {
    all.add(new Block.NewPage());
    all.add(new Block.Heading(2, "Fold flat and post"));
    flat(all);
    masses(all);
    List<Postage.Offer> offers = pack.posting().offers();
    if (offers.size() == 1) {
      one(offers.get(0), all);
    } else {
      many(offers, all);
    }
    all.add(
        Block.Paragraph.note(
            "Thickness is what stiff card stacks to, times "
                + pack.posting().packing().unpressed()
                + " because folded card springs, and the envelope's two walls; press it and measure."
                + " Limits of the posts are published figures kept with this program, each with its"
                + " source and date in its data file; posts change them and no prices are kept, so"
                + " ask at the counter before you send many."));
  }

  private void flat(List<Block> all) {
    if (pack.best() < 0) {
      all.add(Block.Paragraph.of("This card does not lie flat; it goes in a box."));
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    List<Rest> states = pack.flats().states();
    rows.add(row(states.get(pack.best()), "best: "));
    for (int i = 0; i < states.size() && rows.size() < MOST_WAYS; i++) {
      if (i != pack.best()) {
        rows.add(row(states.get(i), ""));
      }
    }
    all.add(
        new Block.Table(
            List.of(
                Block.Column.name("Which way, from the back"),
                Block.Column.text("Size then"),
                Block.Column.text("Thickest spot"),
                Block.Column.text("As stiff card stacks")),
            rows));
    all.add(
        Block.Paragraph.note(
            pack.flats().count()
                + (pack.flats().count() == 1 ? " way" : " ways")
                + " in all. The best goes in the cheapest class, is thinnest, and opens with the"
                + " fewest pushes. Put the folded edge into the envelope first."));
  }

  private List<String> row(Rest r, String before) {
    return List.of(
        before + leans(r),
        units.number(r.width()) + " × " + units.rounded(r.height()),
        units.fine(r.limp()),
        units.fine(r.rigid()));
  }

  static String leans(Rest r) {
    return Leans.words(r);
  }

  private void masses(List<Block> all) {
    Mass m = pack.posting().first().mass();
    all.add(
        Block.Paragraph.of(
            "Weighs about "
                + FrontPage.grams(m.posted(), units)
                + " ready to post: pieces "
                + FrontPage.grams(m.card(), units)
                + ", glue "
                + FrontPage.grams(m.glue(), units)
                + (m.foam() > 0 ? ", foam " + FrontPage.grams(m.foam(), units) : "")
                + ", envelope "
                + FrontPage.grams(m.envelope(), units)
                + "."));
  }

  private void one(Postage.Offer offer, List<Block> all) {
    Posting best = offer.best();
    Decision d = best.decision();
    all.add(new Block.Heading(3, words.taken(d)));
    all.add(Block.Paragraph.of("In " + wrap(best.wrap()) + ". " + room(d)));
    List<String> cheaper = d.missed().stream().map(m -> words.missed(m, d.mail())).toList();
    if (!cheaper.isEmpty()) {
      all.add(Block.Paragraph.of("Why nothing cheaper:"));
      all.add(Block.Items.of(cheaper));
    }
    List<String> others =
        offer.options().stream()
            .skip(1)
            .limit(3)
            .map(p -> wrap(p.wrap()) + ": " + title(p.decision()))
            .toList();
    if (!others.isEmpty()) {
      all.add(Block.Paragraph.of("It would also go in:"));
      all.add(Block.Items.of(others));
    }
    List<String> also = d.taken().map(PostClass::also).orElse(List.of());
    if (!also.isEmpty() || !d.scheme().advice().isEmpty()) {
      List<String> told = new ArrayList<>(also);
      if (!d.scheme().advice().isEmpty()) {
        told.add(d.scheme().advice());
      }
      all.add(Block.Paragraph.note(String.join(" ", told)));
    }
  }

  private String room(Decision d) {
    String thickness = words.thickness(d);
    return "It is then "
        + units.fine(d.mail().thickness())
        + " thick"
        + (thickness.isEmpty() ? "." : ", " + thickness + ", the bound of the cheapest class.");
  }

  private static String title(Decision d) {
    Optional<PostClass> taken = d.taken();
    return taken.map(PostClass::title).orElse("no class takes it");
  }

  private void many(List<Postage.Offer> offers, List<Block> all) {
    all.add(
        Block.Paragraph.of(
            "Your bench names no country, so here is what each post makes of it. Put your country"
                + " on the bench to have it in full."));
    List<List<String>> rows = new ArrayList<>();
    for (Postage.Offer o : offers) {
      Decision d = o.best().decision();
      rows.add(
          List.of(
              d.scheme().title(),
              title(d),
              shortly(o.best().wrap()),
              d.nearest().map(m -> words.reach(m, d.mail())).orElse("is the cheapest")));
    }
    all.add(
        new Block.Table(
            List.of(
                Block.Column.name("Post"),
                Block.Column.text("Goes as"),
                Block.Column.text("In"),
                Block.Column.text("Cheaper")),
            rows));
    if (offers.stream().anyMatch(o -> o.best().wrap() instanceof Wrap.Made)) {
      offers.stream()
          .map(o -> o.best().wrap())
          .filter(w -> w instanceof Wrap.Made)
          .findFirst()
          .ifPresent(w -> all.add(Block.Paragraph.of("Made by hand: " + wrap(w) + ".")));
    }
  }

  private String shortly(Wrap wrap) {
    if (wrap instanceof Wrap.Bought b) {
      return b.envelope().name();
    } else if (wrap instanceof Wrap.Made m) {
      return "made, " + units.size(m.envelope().width(), m.envelope().height());
    }
    return "no envelope";
  }

  private String wrap(Wrap wrap) {
    if (wrap instanceof Wrap.Bought b) {
      return "a bought envelope "
          + b.envelope().name()
          + ", "
          + units.size(b.envelope().width(), b.envelope().height());
    } else if (wrap instanceof Wrap.Made m) {
      return made(m.envelope());
    }
    return "its own box, with no envelope";
  }

  private String made(MadeEnvelope e) {
    return "an envelope of your own, "
        + units.size(e.width(), e.height())
        + ", from a sheet "
        + units.size(e.sheetWidth(), e.sheetHeight())
        + " with a flap of "
        + units.text(e.flap())
        + " and seams of "
        + units.text(e.seam());
  }
}
