package hingeleaf.paper.json;

import hingeleaf.card.Join;
import hingeleaf.card.Stay;
import hingeleaf.fold.contact.Meeting;
import hingeleaf.fold.contact.Swing;
import hingeleaf.fold.stand.Hold;
import hingeleaf.pack.Pack;
import tools.jackson.core.JsonGenerator;

/** What moves besides the stages, as JSON: doors, how they meet, and stays. */
final class MovingJson {
  private final JsonGenerator g;
  private final Pack pack;

  MovingJson(JsonGenerator g, Pack pack) {
    this.g = g;
    this.pack = pack;
  }

  /** {@code "doors": [...], "meetings": [...], "stays": {...}}. */
  void write() {
    g.writeArrayPropertyStart("doors");
    pack.swings().forEach(this::door);
    g.writeEndArray();
    g.writeArrayPropertyStart("meetings");
    pack.meetings().forEach(this::meeting);
    g.writeEndArray();
    stays(pack.hold());
  }

  private void door(Swing s) {
    g.writeStartObject();
    g.writeStringProperty("door", s.door());
    g.writeStringProperty("leaf", s.leaf());
    PackJson.number(g, "reach", s.reach());
    PackJson.number(g, "opens", s.opens());
    if (s.against() != null) {
      g.writeStringProperty("against", s.against());
    }
    PackJson.number(g, "square", s.square());
    g.writeArrayPropertyStart("passes");
    s.passes().forEach(g::writeString);
    g.writeEndArray();
    PackJson.number(g, "flat", 0);
    PackJson.number(g, "boxed", s.ajar());
    g.writeEndObject();
  }

  private void meeting(Meeting m) {
    g.writeStartObject();
    g.writeStringProperty("first", m.first());
    g.writeStringProperty("second", m.second());
    PackJson.number(g, "gap", m.gap());
    PackJson.number(g, "need", m.need());
    g.writeBooleanProperty("binds", m.binds());
    if (!m.laps().isEmpty()) {
      g.writeStringProperty("opensFirst", m.laps());
    }
    g.writeEndObject();
  }

  private void stays(Hold hold) {
    g.writeObjectPropertyStart("stays");
    g.writeNumberProperty("freeSet", hold.set());
    g.writeNumberProperty("freeReleased", hold.released());
    g.writeBooleanProperty("firm", hold.firm());
    g.writeArrayPropertyStart("pieces");
    for (Stay s : pack.card().stays()) {
      g.writeStartObject();
      g.writeStringProperty("piece", s.piece());
      g.writeStringProperty("sort", s.word());
      g.writeBooleanProperty("loose", s.loose());
      PackJson.number(g, "play", s.play());
      g.writeArrayPropertyStart("catches");
      for (Join j : pack.card().joins()) {
        if (j instanceof Join.Passage p && s.catches().contains(p.id())) {
          g.writeString(p.slit().piece() + "/" + p.slit().panel());
        }
      }
      g.writeEndArray();
      g.writeEndObject();
    }
    g.writeEndArray();
    g.writeEndObject();
  }
}
