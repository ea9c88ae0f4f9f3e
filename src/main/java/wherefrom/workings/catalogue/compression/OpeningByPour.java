package wherefrom.workings.catalogue.compression;

import java.util.List;
import wherefrom.quantity.Dimension;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;

/** The chamber's volume per depth at the deck, from a pour between two levels. */
public final class OpeningByPour implements Working {
  private static final AmountInput POURED =
      AmountInput.of("poured", Dimension.VOLUME, "What was added between the two levels.");
  private static final AmountInput DEPTH =
      AmountInput.length("depth", "How far the liquid rose, up to the deck.");

  private static final WorkingCard CARD =
      new WorkingCard(
          "opening-by-pour",
          "Opening of the chamber by pouring",
          List.of(POURED, DEPTH),
          "opening = volume / depth",
          Source.commonPractice(),
          List.of("The mean opening over the depth: keep the depth near that of the cut."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    return Values.of(
        "opening",
        "opening of the chamber",
        terms.unit(Dimension.AREA),
        terms.get(POURED).dividedBy(terms.get(DEPTH)));
  }
}
