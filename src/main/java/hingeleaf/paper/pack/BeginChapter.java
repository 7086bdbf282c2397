package hingeleaf.paper.pack;

import hingeleaf.finding.Level;
import hingeleaf.finding.Problem;
import hingeleaf.pack.GoodToKnow;
import hingeleaf.pack.Pack;
import hingeleaf.paper.book.Block;
import hingeleaf.plan.Step;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What a maker must have and know before the first cut: the tools, what was found to be doubtful,
 * how true it must be cut, how it stands.
 */
final class BeginChapter {
  private static final int MOST_BARS = 3;

  private final Pack pack;

  BeginChapter(Pack pack) {
    this.pack = pack;
  }

  void add(List<Block> all) {
    all.add(new Block.Heading(2, "Before you begin"));
    all.add(
        Block.Paragraph.of(
            "Lay ready: "
                + String.join(", ", tools())
                + ". Blades and glue can hurt: read “Take care” at the end first."));
    warnings(all);
    List<String> know = new ArrayList<>(found(Level.NOTES).stream().map(this::whole).toList());
    // How the shares were reckoned stands in what `check` tells.
    GoodToKnow.of(pack).stream().filter(s -> !s.startsWith("(")).forEach(know::add);
    if (!know.isEmpty()) {
      all.add(new Block.Heading(3, "Good to know"));
      all.add(Block.Items.of(know));
    }
  }

  /** Few warnings each with a bar of its own; many as a list, so that they leave room for work. */
  private void warnings(List<Block> all) {
    List<Problem> warned = found(Level.WARNS);
    if (warned.size() > MOST_BARS) {
      all.add(new Block.Heading(3, "Watch"));
      all.add(Block.Items.of(warned.stream().map(this::whole).toList()));
      return;
    }
    warned.forEach(p -> all.add(new Block.Caution(title(p), Block.Paragraph.of(sentence(p)))));
  }

  private Set<String> tools() {
    Set<String> tools = new LinkedHashSet<>();
    pack.work().steps().stream().map(Step::tools).forEach(tools::addAll);
    return tools;
  }

  /** Findings of a level; what is about the post stands in its own chapter. */
  private List<Problem> found(Level level) {
    return pack.problems().stream()
        .filter(p -> p.level() == level && !p.kind().startsWith("post-"))
        .toList();
  }

  private static String title(Problem p) {
    return p.part().isEmpty() ? "Watch" : "Watch “" + p.part() + "”";
  }

  /** The message without the part's name, which stands in the title. */
  private static String sentence(Problem p) {
    String head = p.part() + ": ";
    String rest = p.message().startsWith(head) ? p.message().substring(head.length()) : p.message();
    return closed(rest);
  }

  private String whole(Problem p) {
    boolean named = !p.part().isEmpty() && p.message().startsWith(p.part() + ": ");
    return named ? p.message() + "." : closed(p.message());
  }

  private static String closed(String sentence) {
    String end = sentence.endsWith(".") ? "" : ".";
    return sentence.isEmpty()
        ? sentence
        : sentence.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + sentence.substring(1) + end;
  }
}
