package hingeleaf.web;

import hingeleaf.design.Change;
import hingeleaf.design.DesignDocument;
import hingeleaf.design.Form;
import hingeleaf.design.NewText;
import hingeleaf.design.YamlText;
import hingeleaf.measure.Length;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Reading;
import hingeleaf.measure.Unit;
import hingeleaf.mend.LargestCard;
import hingeleaf.mend.Trial;
import hingeleaf.outline.Outline;
import hingeleaf.pack.Pack;
import hingeleaf.stock.Envelope;
import hingeleaf.stock.Envelopes;
import hingeleaf.structure.Structure;
import hingeleaf.structure.Structures;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import tools.jackson.databind.JsonNode;

/** What can be asked before a card lies open: the cards there are, and new ones. */
final class StartApi {
  private final Desk desk;
  private final Reckoner reckoner;
  private final Reckoner patient;
  private final Map<String, String> pictures = new ConcurrentHashMap<>();

  StartApi(Desk desk, Reckoner reckoner, Reckoner patient) {
    this.desk = desk;
    this.reckoner = reckoner;
    this.patient = patient;
  }

  void start(Context c) {
    Optional<Unit> unit = desk.unit();
    CardApi.json(
        c,
        JsonOut.object(
            out -> {
              out.put("unit", unit.map(Unit::word).orElse(null));
              out.put("folder", String.valueOf(desk.folder().root().getFileName()));
              out.texts("cards", desk.folder().cards().stream().filter(n -> !bench(n)).toList());
              out.each(
                  "structures",
                  Structures.ALL,
                  s -> {
                    Form f = s.form();
                    out.put("name", f.name()).put("title", f.title()).put("says", f.says());
                  });
              out.each(
                  "examples",
                  Examples.ALL,
                  e -> out.put("name", e.name()).put("title", title(e)).put("says", e.says()));
              MakerUnits units = MakerUnits.of(unit.orElse(Unit.MM));
              out.each(
                  "envelopes",
                  Envelopes.standard(),
                  e ->
                      out.put("name", e.name())
                          .put("size", units.size(e.width(), e.height()))
                          .put("width", units.number(e.width()) + " " + units.unit().word())
                          .put("height", units.number(e.height()) + " " + units.unit().word()));
            }));
  }

  private static boolean bench(String name) {
    return name.equals("bench.yaml");
  }

  private String title(Examples.Example e) {
    return design(e.name(), Examples.design(e)).title();
  }

  void settings(Context c) {
    JsonNode asked = EditRequest.object(Guard.body(c));
    Unit unit =
        Unit.named(EditRequest.text(asked, "unit"))
            .orElseThrow(() -> new Refusal(400, "unit takes mm, cm or in"));
    desk.folder().keep("unit", unit.word());
    CardApi.json(c, JsonOut.object(out -> out.put("unit", unit.word())));
  }

  private static DesignDocument design(String name, byte[] bytes) {
    DesignDocument.Outcome outcome = DesignDocument.read(name, bytes, Structures.FORMS);
    if (outcome instanceof DesignDocument.Outcome.Right r) {
      return r.document();
    }
    throw new IllegalStateException(
        name + ": " + ((DesignDocument.Outcome.Wrong) outcome).problems());
  }

  private Pack example(Context c) {
    Examples.Example e = example(c.pathParam("name"));
    DesignDocument design = design(e.name(), Examples.design(e));
    Pack pack = desk.pack(design, design.unit(), n -> Optional.of(Examples.drawing(n)));
    if (pack.blocked()) {
      throw new IllegalStateException(e.name() + ": " + pack.problems());
    }
    return pack;
  }

  private static Examples.Example example(String name) {
    return Examples.named(name).orElseThrow(() -> new Refusal(404, "there is no such example"));
  }

  void examplePicture(Context c) {
    picture(c, () -> example(c));
  }

  /** An example in three dimensions, to be looked at before anything is written. */
  void exampleScene(Context c) {
    CardApi.json(
        c,
        reckoner.run(
            () -> {
              Pack pack = example(c);
              return JsonOut.object(
                  out -> {
                    out.put("title", pack.title());
                    out.group("scene", o -> SceneJson.write(o, pack));
                    out.group(
                        "motion",
                        o -> SceneJson.motion(o, pack.way(0, 24), pack.made().panels().size()));
                  });
            }));
  }

  void structurePicture(Context c) {
    String name = c.pathParam("name");
    Form form = structure(name).form();
    picture(c, () -> pack(design(name, fresh(form, Unit.MM)), Unit.MM));
  }

  /** Pictures of what never changes are drawn once. */
  private void picture(Context c, Supplier<Pack> pack) {
    boolean dark = CardApi.dark(c);
    String key = c.path() + dark;
    String known = pictures.get(key);
    if (known == null) {
      known = patient.run(() -> ResultJson.picture(pack.get(), dark));
      pictures.put(key, known);
    }
    CardApi.svg(c, known);
  }

  private static Structure structure(String name) {
    return Structures.ALL.stream()
        .filter(s -> s.form().name().equals(name))
        .findFirst()
        .orElseThrow(() -> new Refusal(404, "there is no such structure"));
  }

  private static byte[] fresh(Form form, Unit unit) {
    Unit written = unit == Unit.IN ? Unit.IN : Unit.MM;
    return NewText.design(Structures.FORMS, form.name(), written).getBytes(StandardCharsets.UTF_8);
  }

  private Pack pack(DesignDocument design, Unit unit) {
    return desk.pack(design, unit, n -> Optional.empty());
  }

  /** Makes a card file from an example, a structure or an envelope, and tells its name. */
  void create(Context c) {
    JsonNode asked = EditRequest.object(Guard.body(c));
    String name =
        reckoner.run(
            () ->
                switch (EditRequest.text(asked, "from")) {
                  case "example" -> fromExample(EditRequest.text(asked, "name"));
                  case "structure" -> fromStructure(asked);
                  case "envelope" -> fromEnvelope(asked);
                  default -> throw new Refusal(400, "a card starts from something else");
                });
    c.status(201);
    CardApi.json(c, JsonOut.object(out -> out.put("name", name)));
  }

  private String fromExample(String name) {
    Examples.Example e = example(name);
    e.drawings().forEach(d -> desk.folder().addDrawing(d, Examples.drawing(d)));
    return desk.folder().addCard(e.name() + ".yaml", Examples.design(e));
  }

  private String fromStructure(JsonNode asked) {
    Form form = structure(EditRequest.text(asked, "name")).form();
    return save(design("new", fresh(form, unit())), "My card");
  }

  private Unit unit() {
    return desk.unit().orElse(Unit.MM);
  }

  private String save(DesignDocument design, String title) {
    Trial titled = Trial.of(design.tree(), List.of(new Change.Put("title", YamlText.of(title))));
    String text = titled instanceof Trial.Read r ? r.text() : design.tree().source().text();
    String file = title.replaceAll("[^\\p{L}\\p{N} -]", "").strip();
    return desk.folder().addCard(file + ".yaml", text.getBytes(StandardCharsets.UTF_8));
  }

  private String fromEnvelope(JsonNode asked) {
    Form form = structure(EditRequest.text(asked, "name")).form();
    double width = length(EditRequest.text(asked, "width"));
    double height = length(EditRequest.text(asked, "height"));
    Envelope envelope = new Envelope("the envelope", width, height, 0, 0);
    boolean upright = asked.path("upright").asBoolean(false);
    double across = upright ? envelope.height() : envelope.width();
    double up = upright ? envelope.width() : envelope.height();
    Pack start = pack(design("new", fresh(form, unit())), unit());
    DesignDocument found =
        LargestCard.of(start, across, up)
            .orElseThrow(
                () ->
                    new Refusal(
                        422,
                        "this envelope is too small for any card of "
                            + form.title()
                            + " - take a larger one"));
    return save(found, "My card");
  }

  private double length(String text) {
    Reading reading = Length.read(text, unit());
    if (reading instanceof Reading.Fault f) {
      throw new Refusal(422, f.sentence());
    }
    double mm = ((Reading.Read) reading).length().mm();
    if (!(mm > 0)) {
      throw new Refusal(422, "an envelope is larger than nothing");
    }
    return mm;
  }

  /** Takes a drawing, if it can be cut: it is read as an outline before it is kept. */
  void drawing(Context c) {
    byte[] bytes = Guard.body(c);
    String name = String.valueOf(c.queryParam("name"));
    Outline.Reading reading = reckoner.run(() -> Outline.read(name, bytes, OptionalDouble.of(50)));
    if (reading instanceof Outline.Reading.Refused r) {
      throw new Refusal(422, r.problem().message());
    }
    desk.folder().addDrawing(name, bytes);
    c.status(201);
    CardApi.json(c, JsonOut.object(out -> out.put("name", name)));
  }
}
