package hingeleaf.paper.template;

import hingeleaf.card.Face;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.PaperSize;
import java.util.function.DoubleFunction;

/**
 * What all template pages share.
 *
 * @param title of the card
 * @param seen which face is up; {@code BACK} mirrors everything, for marking on the back
 * @param length prints a length given in mm as the maker reads it, with its unit
 */
public record TemplateStyle(
    String title, PaperSize paper, Face seen, DoubleFunction<String> length, Fonts fonts) {}
