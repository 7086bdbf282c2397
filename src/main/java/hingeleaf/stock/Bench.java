package hingeleaf.stock;

import java.util.List;
import java.util.Optional;

/**
 * What a maker owns and pays. A value: read elsewhere, or taken from {@link BuiltInBench}.
 *
 * @param title as shown, such as "my bench"
 * @param inches whether this maker works, and reads the plan, in inches
 * @param trimmer for straight cuts
 * @param ruler for everything the trimmer and the scoring board cannot do
 * @param scoringBoard for scores
 * @param machineWidth of the opening of the die-cutting machine, mm; 0 where there is none
 * @param money what prices are in, such as "EUR"; empty where not told
 * @param hourlyRate what an hour of the maker's work costs, in that money; 0 where not told
 * @param country two letters (ISO 3166-1), which decide the post; empty where not told
 */
public record Bench(
    String title,
    boolean inches,
    Trimmer trimmer,
    Ruler ruler,
    ScoringBoard scoringBoard,
    double machineWidth,
    List<Die> dies,
    List<EmbossingFolder> embossingFolders,
    List<Stock> papers,
    List<Glue> glues,
    List<Foam> foams,
    List<Envelope> envelopes,
    Accuracy accuracy,
    String money,
    double hourlyRate,
    String country) {
  public Bench {
    Positive.orZero("width of the die-cutting machine", machineWidth);
    Positive.orZero("hourly rate", hourlyRate);
    dies = List.copyOf(dies);
    embossingFolders = List.copyOf(embossingFolders);
    papers = List.copyOf(papers);
    glues = List.copyOf(glues);
    foams = List.copyOf(foams);
    envelopes = List.copyOf(envelopes);
  }

  /** The paper of that name, exactly as written; empty where the bench has none. */
  public Optional<Stock> paper(String name) {
    return papers.stream().filter(p -> p.name().equals(name)).findFirst();
  }

  /** The glue or tape of that name; empty where the bench has none. */
  public Optional<Glue> glue(String name) {
    return glues.stream().filter(g -> g.name().equals(name)).findFirst();
  }

  /** The die of that name; empty where the bench has none. */
  public Optional<Die> die(String name) {
    return dies.stream().filter(d -> d.name().equals(name)).findFirst();
  }

  /**
   * The thinnest foam at least so thick; empty where all are thinner.
   *
   * @param raisedBy mm
   */
  public Optional<Foam> foamFor(double raisedBy) {
    return foams.stream()
        .filter(f -> f.thickness() >= raisedBy - 1e-6)
        .min((a, b) -> Double.compare(a.thickness(), b.thickness()));
  }

  /** The same bench with other papers and dies, as when some were measured anew. */
  public Bench with(List<Stock> otherPapers, List<Die> otherDies) {
    return new Bench(
        title,
        inches,
        trimmer,
        ruler,
        scoringBoard,
        machineWidth,
        otherDies,
        embossingFolders,
        otherPapers,
        glues,
        foams,
        envelopes,
        accuracy,
        money,
        hourlyRate,
        country);
  }
}
