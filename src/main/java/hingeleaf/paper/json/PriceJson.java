package hingeleaf.paper.json;

import hingeleaf.pack.Pack;
import hingeleaf.pack.Priced;
import hingeleaf.price.Costs;
import hingeleaf.price.Money;
import hingeleaf.price.Quote;
import java.util.Locale;
import tools.jackson.core.JsonGenerator;

/** What cards cost and what they might be sold for, as JSON; amounts are exact to a cent. */
final class PriceJson {
  private static final int CENTS = 2;

  private final JsonGenerator g;

  PriceJson(JsonGenerator g) {
    this.g = g;
  }

  /** {@code "price": {...}}. */
  void write(Pack pack) {
    Priced p = pack.price();
    g.writeObjectPropertyStart("price");
    g.writeStringProperty("money", p.money());
    g.writeNumberProperty("copies", p.job().copies());
    g.writeNumberProperty("minutes", p.job().minutes());
    g.writeArrayPropertyStart("lines");
    for (Costs.Line line : p.bySheet().lines()) {
      g.writeStartObject();
      g.writeStringProperty("kind", line.kind().name().toLowerCase(Locale.ROOT));
      g.writeStringProperty("name", line.name());
      amount("batch", line.amount());
      amount("card", p.bySheet().perCard(line.amount()));
      g.writeEndObject();
    }
    g.writeEndArray();
    amount("costBySheet", p.bySheet().perCard(p.bySheet().total()));
    amount("costByArea", p.byArea().perCard(p.byArea().total()));
    g.writeArrayPropertyStart("prices");
    for (Quote q : p.quotes()) {
      for (Quote.Price price : q.prices()) {
        g.writeStartObject();
        g.writeStringProperty("label", price.label());
        amount("amount", price.amount());
        g.writeStringProperty("formula", q.formula().formula());
        g.writeStringProperty("source", q.formula().source());
        g.writeEndObject();
      }
    }
    g.writeEndArray();
    g.writeEndObject();
  }

  private void amount(String name, Money amount) {
    g.writeNumberProperty(name, amount.rounded(CENTS));
  }
}
