package hingeleaf.paper.template;

import hingeleaf.card.Face;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.Lengths;
import hingeleaf.paper.PaperSize;

/**
 * What all template pages share.
 *
 * @param title of the card
 * @param seen which face is up; {@code BACK} mirrors everything, for marking on the back
 * @param lengths how the maker reads them
 */
public record TemplateStyle(
    String title, PaperSize paper, Face seen, Lengths lengths, Fonts fonts) {}
