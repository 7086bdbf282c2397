package hingeleaf.web;

import hingeleaf.design.DesignDocument;
import hingeleaf.finding.Level;
import hingeleaf.finding.Problem;
import hingeleaf.measure.Unit;
import hingeleaf.mend.Mend;
import hingeleaf.mend.Mends;
import hingeleaf.mend.Trial;
import hingeleaf.pack.Eye;
import hingeleaf.pack.Pack;
import hingeleaf.paper.pack.PackFiles;
import hingeleaf.paper.pack.PlanChapters;
import hingeleaf.store.History;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** What can be asked of one card. */
final class CardApi {
  private static final int STEPS = 24;

  private final Desk desk;
  private final Reckoner reckoner;
  private final Reckoner patient;

  /** Findings and mends wait for no chapter; its thread ends with the process. */
  private final Reckoner thinking = Reckoner.patient();

  CardApi(Desk desk, Reckoner reckoner, Reckoner patient) {
    this.desk = desk;
    this.reckoner = reckoner;
    this.patient = patient;
  }

  private static Unit view(Context c) {
    String asked = c.queryParam("unit");
    return Unit.named(asked == null ? "mm" : asked)
        .orElseThrow(() -> new Refusal(400, "unit takes mm, cm or in"));
  }

  private Opened open(Context c) {
    return desk.open(c.pathParam("name"), view(c));
  }

  static void json(Context c, String text) {
    c.contentType("application/json; charset=utf-8").result(text);
  }

  static void svg(Context c, String text) {
    c.contentType("image/svg+xml; charset=utf-8").result(text);
  }

  static boolean dark(Context c) {
    return "dark".equals(c.queryParam("ground"));
  }

  private void answer(Context c, Opened card, String told) {
    json(c, CardJson.text(card, told, desk.folder().drawings()));
  }

  void card(Context c) {
    reckon(c, () -> answer(c, open(c), ""));
  }

  private void reckon(Context c, Runnable work) {
    reckon(reckoner, c, work);
  }

  private void slowly(Context c, Runnable work) {
    reckon(patient, c, work);
  }

  /** Ends the work on a question that nobody waits for any more. */
  void stop(Context c) {
    String name = EditRequest.text(EditRequest.object(Guard.body(c)), "ask");
    for (Reckoner r : List.of(reckoner, patient, thinking)) {
      r.stop(name);
    }
    json(c, JsonOut.object(out -> out.put("ask", name)));
  }

  /** What an eye sees of what should be seen, and of what should not. */
  void sight(Context c) {
    Eye eye = SightJson.eye(c);
    reckon(c, () -> json(c, SightJson.text(open(c).whole(), eye)));
  }

  /** The same from nine places, told later than the one that is looked from. */
  void sightGrid(Context c) {
    double distance = SightJson.distance(c);
    reckon(thinking, c, () -> json(c, SightJson.grid(open(c).whole(), distance)));
  }

  void doors(Context c) {
    reckon(thinking, c, () -> json(c, DoorsJson.text(open(c).whole())));
  }

  /** What the page calls a question that it may want to stop; empty where it does not say. */
  private static String ask(Context c) {
    String name = c.header("X-Hingeleaf-Ask");
    return name != null && name.matches("[A-Za-z0-9-]{8,64}") ? name : "";
  }

  private static void reckon(Reckoner by, Context c, Runnable work) {
    by.run(
        ask(c),
        () -> {
          work.run();
          return true;
        });
  }

  /** Changes the card and saves it at once; nothing is changed where one part is refused. */
  void edit(Context c) {
    JsonNode asked = EditRequest.object(Guard.body(c));
    reckon(c, () -> edit(c, asked));
  }

  private void edit(Context c, JsonNode asked) {
    String name = c.pathParam("name");
    History history = desk.history(name);
    synchronized (history) {
      Opened now = desk.open(name, view(c));
      current(now, asked);
      DesignDocument design = EditRequest.apply(asked, now.design(), now.view());
      History.Version saved = history.save(bytes(design));
      answer(c, desk.opened(name, saved, now.view()), "");
    }
  }

  private static byte[] bytes(DesignDocument design) {
    return design.tree().source().text().getBytes(StandardCharsets.UTF_8);
  }

  /** Two windows may show one card; the one that has not seen the last change must look again. */
  private static void current(Opened now, JsonNode asked) {
    if (EditRequest.whole(asked, "base") != now.version().number()) {
      throw new Refusal(409, "this card was changed elsewhere in the meantime; look again");
    }
  }

  void undo(Context c) {
    String name = c.pathParam("name");
    reckon(c, () -> answer(c, desk.opened(name, desk.history(name).undo(), view(c)), ""));
  }

  void redo(Context c) {
    String name = c.pathParam("name");
    reckon(c, () -> answer(c, desk.opened(name, desk.history(name).redo(), view(c)), ""));
  }

  /** All findings, those of folding and of the post too. */
  void findings(Context c) {
    reckon(
        thinking,
        c,
        () -> {
          List<Problem> all = open(c).problems();
          json(c, JsonOut.object(out -> FindingJson.write(out, all)));
        });
  }

  /** A chapter of the plan, in the plan's words. */
  void chapter(Context c) {
    String wanted = c.pathParam("chapter");
    PlanChapters chapter =
        Arrays.stream(PlanChapters.values())
            .filter(p -> p.name().toLowerCase(Locale.ROOT).equals(wanted))
            .findFirst()
            .orElseThrow(() -> new Refusal(404, "the plan has no such chapter"));
    int copies = copies(c.queryParam("copies"));
    slowly(
        c, () -> json(c, BlockJson.text(chapter.of(desk.copies(open(c), copies), desk.fonts()))));
  }

  private static int copies(@Nullable String asked) {
    if (asked == null) {
      return 1;
    }
    int n = asked.matches("\\d{1,5}") ? Integer.parseInt(asked) : 0;
    if (n < 1 || n > 10_000) {
      throw new Refusal(422, "how many cards: 1 to 10000, not " + asked);
    }
    return n;
  }

  /** The mends that were tried for every finding that wants something, by its number. */
  void mends(Context c) {
    reckon(
        thinking,
        c,
        () -> {
          Pack pack = open(c).whole();
          List<Problem> problems = pack.problems();
          json(
              c,
              JsonOut.object(
                  out ->
                      out.list(
                          "mends",
                          () ->
                              problems.forEach(
                                  p ->
                                      out.item(
                                          () ->
                                              Mends.of(pack, p)
                                                  .forEach(m -> out.string(m.words())))))));
        });
  }

  /** Does one of the mends of a finding. */
  void mend(Context c) {
    JsonNode asked = EditRequest.object(Guard.body(c));
    reckon(
        c,
        () -> {
          String name = c.pathParam("name");
          History history = desk.history(name);
          synchronized (history) {
            Opened now = desk.open(name, view(c));
            current(now, asked);
            Mend mend = mend(now, asked);
            Trial trial = Trial.of(now.design().tree(), mend.changes());
            if (!(trial instanceof Trial.Read r)) {
              throw new Refusal(422, "this can no longer be done; look again");
            }
            History.Version saved = history.save(bytes(r.design()));
            answer(c, desk.opened(name, saved, now.view()), "Done: " + mend.words() + ".");
          }
        });
  }

  private static Mend mend(Opened now, JsonNode asked) {
    List<Problem> problems = now.problems();
    int finding = EditRequest.whole(asked, "finding");
    if (finding < 0 || finding >= problems.size()) {
      throw new Refusal(422, "there is no such finding any more");
    }
    List<Mend> mends = Mends.of(now.whole(), problems.get(finding));
    int choice = EditRequest.whole(asked, "mend");
    if (choice < 0 || choice >= mends.size()) {
      throw new Refusal(422, "no change is known that cures this alone");
    }
    return mends.get(choice);
  }

  void flats(Context c) {
    reckon(c, () -> json(c, ResultJson.flats(open(c).whole())));
  }

  /** The way from made to a rest, reckoned here and only interpolated by the page. */
  void motion(Context c) {
    String asked = c.queryParam("rest");
    int rest = asked != null && asked.matches("\\d{1,4}") ? Integer.parseInt(asked) : 0;
    reckon(
        c,
        () -> {
          Pack pack = open(c).whole();
          if (rest >= pack.flats().states().size()) {
            throw new Refusal(404, "there is no such way to lie flat");
          }
          json(
              c,
              JsonOut.object(
                  out ->
                      SceneJson.motion(out, pack.way(rest, STEPS), pack.made().panels().size())));
        });
  }

  void results(Context c) {
    slowly(c, () -> json(c, ResultJson.text(open(c).whole(), desk.fonts())));
  }

  void picture(Context c) {
    slowly(c, () -> svg(c, ResultJson.picture(open(c).whole(), dark(c))));
  }

  void design(Context c) {
    c.contentType("application/yaml; charset=utf-8").result(open(c).version().bytes());
  }

  private Map<String, byte[]> files(Context c) {
    Pack pack = open(c).whole();
    if (pack.problems().stream().anyMatch(p -> p.level() == Level.BLOCKS)) {
      throw new Refusal(422, "nothing can be made while something blocks", pack.problems());
    }
    return PackFiles.of(pack, desk.fonts());
  }

  /** The names and sizes of the files of the pack. */
  void fileList(Context c) {
    slowly(
        c,
        () -> {
          Map<String, byte[]> files = files(c);
          json(
              c,
              JsonOut.object(
                  out ->
                      out.each(
                          "files",
                          files.entrySet(),
                          f -> out.put("name", f.getKey()).put("bytes", f.getValue().length))));
        });
  }

  void file(Context c) {
    String wanted = c.queryParam("file");
    slowly(
        c,
        () -> {
          byte[] bytes = files(c).get(wanted == null ? "" : wanted);
          if (bytes == null) {
            throw new Refusal(404, "the pack has no such file");
          }
          c.contentType(kind(String.valueOf(wanted))).result(bytes);
        });
  }

  private static String kind(String name) {
    String ending = name.substring(name.lastIndexOf('.') + 1);
    return switch (ending) {
      case "pdf" -> "application/pdf";
      case "svg" -> "image/svg+xml";
      case "png" -> "image/png";
      case "json" -> "application/json";
      default -> "application/octet-stream";
    };
  }

  void zip(Context c) {
    slowly(c, () -> c.contentType("application/zip").result(zip(files(c))));
  }

  /** The same files give the same bytes: entries carry no time of their own. */
  static byte[] zip(Map<String, byte[]> files) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> f : files.entrySet()) {
        ZipEntry entry = new ZipEntry(f.getKey());
        entry.setTime(315_532_800_000L); // 1980-01-01, the first day that the format knows
        zip.putNextEntry(entry);
        zip.write(f.getValue());
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
