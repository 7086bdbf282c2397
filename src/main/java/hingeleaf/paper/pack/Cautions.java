package hingeleaf.paper.pack;

import hingeleaf.card.Join;
import hingeleaf.pack.Pack;
import hingeleaf.paper.book.Block;
import java.util.ArrayList;
import java.util.List;

/**
 * What could hurt. Usual cautions of the trade; local rules and licensed practice come first, and
 * the text says so.
 */
final class Cautions {
  private Cautions() {}

  static void add(Pack pack, List<Block> all) {
    List<Block> care = new ArrayList<>();
    care.add(new Block.Heading(2, "Take care"));
    care.add(
        caution(
            "Blades",
            "Cut on a mat larger than the work, along a steel ruler, holding hand behind the blade, "
                + "away from the body. A blunt blade needs force and slips: change it early, and put "
                + "old ones into a closed container."));
    care.add(
        caution(
            "Glue",
            "Work with air moving when you use solvent glues, sprays or waxes, or better use none. Hot "
                + "glue burns: cold water within reach, and do not pull it off the skin."));
    if (raised(pack)) {
      care.add(
          caution(
              "Small parts",
              "This card carries loose ornaments and foam. Parts that come off are not for children "
                  + "under three years, nor are magnets for any child."));
    }
    care.add(
        Block.Paragraph.note(
            "These are the usual cautions, not the law: where you teach or sell, follow your local "
                + "rules on safety and labelling, and ask a licensed adviser where they are not "
                + "clear."));
    all.add(new Block.Together(care));
  }

  private static boolean raised(Pack pack) {
    return pack.card().joins().stream().anyMatch(j -> j instanceof Join.Glue g && g.raisedBy() > 0);
  }

  private static Block caution(String title, String text) {
    return new Block.Caution(title, Block.Paragraph.of(text));
  }
}
