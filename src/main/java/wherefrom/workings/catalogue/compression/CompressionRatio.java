package wherefrom.workings.catalogue.compression;

import static wherefrom.workings.catalogue.compression.CombustionSpace.CHAMBER;
import static wherefrom.workings.catalogue.compression.CombustionSpace.PISTON_VOLUME;

import java.util.List;
import java.util.Optional;
import wherefrom.quantity.Unit;
import wherefrom.workings.Evaluation;
import wherefrom.workings.MissingInputs;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.catalogue.basis.WorkingSources;
import wherefrom.workings.maths.DualNumber;

/** The compression ratio with every term. */
public final class CompressionRatio implements Working {
  private static final WorkingCard CARD =
      new WorkingCard(
          "compression-ratio",
          "Compression ratio",
          CombustionSpace.inputs(CHAMBER),
          "ratio = (swept + clearance) / clearance;"
              + " clearance = chamber + gasket hole + deck space + piston volume + crevice",
          WorkingSources.COMPRESSION_RATIO,
          List.of(
              "Geometric ratio of one cylinder: valve timing and leakage are not in it.",
              "The gasket's hole is taken as round."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    Optional<MissingInputs> missing = CombustionSpace.findMissing(terms);
    if (missing.isPresent()) {
      return missing.get();
    }
    CombustionSpace space = CombustionSpace.of(terms);
    DualNumber clearance = terms.get(CHAMBER).plus(space.withoutChamber());
    if (!DualNumber.of(0).isLessThan(clearance)) {
      return noRoom(terms);
    }
    Values values =
        Values.of("ratio", "compression ratio", Unit.ONE, space.ratio(clearance))
            .and("swept", "swept volume", Unit.CUBIC_CENTIMETRE, space.swept())
            .and("clearance", "clearance volume", Unit.CUBIC_CENTIMETRE, clearance);
    return CombustionSpace.withRatioNotes(
        terms, CombustionSpace.pistonToHead(terms), space.ratio(clearance), values);
  }

  /** Nothing is left above the piston. */
  static Nonsense noRoom(Terms terms) {
    if (terms.get(PISTON_VOLUME).isLessThan(DualNumber.of(0))) {
      return new Nonsense(
          PISTON_VOLUME.key(),
          "The dome ("
              + terms.text(PISTON_VOLUME)
              + ") is larger than the chamber and the gap above the piston together. Check"
              + " the volumes of dome and chamber.");
    }
    return new Nonsense(
        CombustionSpace.DECK.key(),
        "The piston stands so far above the deck ("
            + terms.text(CombustionSpace.DECK)
            + ") that no room is left above it. Check the sign and size of deck.");
  }
}
