package hingeleaf.paper.json;

import hingeleaf.measure.Unit;
import hingeleaf.pack.Mass;
import hingeleaf.pack.Pack;
import hingeleaf.pack.Postage;
import hingeleaf.post.Decision;
import hingeleaf.post.Mail;
import hingeleaf.post.PostClass;
import hingeleaf.post.PostWords;
import hingeleaf.post.Posting;
import hingeleaf.post.Wrap;
import tools.jackson.core.JsonGenerator;

/** How a card is posted, as JSON. */
final class PostJson {
  private final JsonGenerator g;
  private final PostWords words;

  PostJson(JsonGenerator g, Pack pack) {
    this.g = g;
    this.words = new PostWords(pack.inputs().wants().units().unit() == Unit.IN);
  }

  /** {@code "posting": [...]}, one for each post. */
  void write(Pack pack) {
    g.writeArrayPropertyStart("posting");
    pack.posting().offers().forEach(this::offer);
    g.writeEndArray();
  }

  private void offer(Postage.Offer offer) {
    Posting best = offer.best();
    Decision d = best.decision();
    g.writeStartObject();
    g.writeStringProperty("scheme", d.scheme().name());
    g.writeStringProperty("title", d.scheme().title());
    g.writeStringProperty("class", d.taken().map(PostClass::name).orElse("none"));
    g.writeStringProperty("says", words.taken(d));
    if (d.step() > 0) {
      PackJson.number(g, "stepGrams", d.step());
    }
    if (offer.rest() >= 0) {
      g.writeNumberProperty("flatState", offer.rest());
    }
    envelope(best.wrap());
    mail(d.mail());
    mass(g, offer.mass());
    if (d.thicknessMargin().isPresent()) {
      PackJson.number(g, "thicknessMargin", d.thicknessMargin().get());
    }
    g.writeArrayPropertyStart("notCheaper");
    for (Decision.Missed m : d.missed()) {
      g.writeStartObject();
      g.writeStringProperty("class", m.postClass().name());
      g.writeStringProperty("why", words.missed(m, d.mail()));
      g.writeStringProperty("change", words.reach(m, d.mail()));
      g.writeEndObject();
    }
    g.writeEndArray();
    g.writeEndObject();
  }

  private void envelope(Wrap wrap) {
    g.writeObjectPropertyStart("envelope");
    if (wrap instanceof Wrap.Bought b) {
      g.writeStringProperty("kind", "bought");
      g.writeStringProperty("name", b.envelope().name());
      PackJson.number(g, "width", b.envelope().width());
      PackJson.number(g, "height", b.envelope().height());
    } else if (wrap instanceof Wrap.Made m) {
      g.writeStringProperty("kind", "made");
      PackJson.number(g, "width", m.envelope().width());
      PackJson.number(g, "height", m.envelope().height());
      PackJson.number(g, "sheetWidth", m.envelope().sheetWidth());
      PackJson.number(g, "sheetHeight", m.envelope().sheetHeight());
    } else {
      g.writeStringProperty("kind", "none");
    }
    g.writeEndObject();
  }

  private void mail(Mail mail) {
    g.writeObjectPropertyStart("mail");
    PackJson.number(g, "length", mail.length());
    PackJson.number(g, "height", mail.height());
    PackJson.number(g, "thickness", mail.thickness());
    PackJson.number(g, "grams", mail.grams());
    g.writeEndObject();
  }

  /** {@code "mass": {...}} of one offer. */
  private static void mass(JsonGenerator g, Mass m) {
    g.writeObjectPropertyStart("mass");
    parts(g, m);
    g.writeEndObject();
  }

  /** The members of a mass. */
  static void parts(JsonGenerator g, Mass m) {
    PackJson.number(g, "card", m.card());
    PackJson.number(g, "glue", m.glue());
    PackJson.number(g, "foam", m.foam());
    PackJson.number(g, "envelope", m.envelope());
    PackJson.number(g, "posted", m.posted());
  }
}
