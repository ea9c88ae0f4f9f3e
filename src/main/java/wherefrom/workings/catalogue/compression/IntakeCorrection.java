package wherefrom.workings.catalogue.compression;

import java.util.List;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Note;
import wherefrom.workings.Range;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.maths.DualNumber;

/**
 * What a V engine's intake faces and end rails must lose when the heads come down.
 *
 * <p>With β half the bank angle, α the angle between deck and intake face and t the total drop per
 * bank: c = t·sin β / sin(α − β) normal to each intake face, h = t·sin α / sin(α − β) off the end
 * rails, and s = t·sin β / cos(α − β) the slide of the ports when nothing is corrected.
 */
public final class IntakeCorrection implements Working {
  public static final AmountInput CUT =
      AmountInput.length(
              "cut", "All that lowers each head: head cut, deck cut and thinner gasket together.")
          .orZero();
  public static final AmountInput BANK_ANGLE =
      AmountInput.of(
              "bank-angle", Dimension.ANGLE, "The angle between the two banks, such as 90 deg.")
          .in(Range.above("0", "180"));
  public static final AmountInput FACE_ANGLE =
      AmountInput.of(
              "face-angle",
              Dimension.ANGLE,
              "In the head, between deck and intake face: 90 deg where the face is parallel to the"
                  + " cylinders, 80 deg where it leans outward by 10 deg.")
          .in(Range.above("0", "180"));

  private static final WorkingCard CARD =
      new WorkingCard(
          "intake-correction",
          "Intake face and manifold correction",
          List.of(CUT, BANK_ANGLE, FACE_ANGLE),
          "β = bank angle / 2; face = cut·sin β / sin(α − β); rails = cut·sin α / sin(α − β);"
              + " slide = cut·sin β / cos(α − β)",
          Source.workedOut("plane geometry of the two banks; no printed table was found"),
          List.of(
              "For V engines whose two heads are cut alike.",
              "Face: off each head's intake face or off that side of the manifold, not both."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    DualNumber half = halfOf(terms.get(BANK_ANGLE));
    DualNumber face = terms.get(FACE_ANGLE);
    if (!half.isLessThan(face)) {
      return new Nonsense(
          FACE_ANGLE.key(),
          "The face angle must be more than half the bank angle. Only then does the"
              + " manifold sit between the heads. This working does not fit other engines,"
              + " such as an opposed one.");
    }
    if (!face.minus(half).isLessThan(DualNumber.of(90))) {
      return new Nonsense(
          FACE_ANGLE.key(),
          "With these angles the intake faces would close in toward the top. They would"
              + " trap the manifold. Check how the face angle is measured.");
    }
    DualNumber cut = terms.get(CUT);
    Unit unit = terms.lengthUnit();
    return Values.of("face", "off each intake face", unit, faceRemoval(cut, half, face))
        .and("rails", "off each end rail", unit, railRemoval(cut, half, face))
        .and("slide", "slide of the ports uncorrected", unit, portSlide(cut, half, face))
        .note(
            Note.remark(
                "check-fit",
                "Lay the manifold on and check the fit before sealing. Bolt holes move as well.",
                Source.commonPractice()));
  }

  /** β: half the bank angle, in degrees. */
  public static DualNumber halfOf(DualNumber bankAngle) {
    return bankAngle.times(0.5);
  }

  public static DualNumber faceRemoval(DualNumber cut, DualNumber half, DualNumber face) {
    return cut.times(half.sineOfDegrees()).dividedBy(face.minus(half).sineOfDegrees());
  }

  public static DualNumber railRemoval(DualNumber cut, DualNumber half, DualNumber face) {
    return cut.times(face.sineOfDegrees()).dividedBy(face.minus(half).sineOfDegrees());
  }

  public static DualNumber portSlide(DualNumber cut, DualNumber half, DualNumber face) {
    return cut.times(half.sineOfDegrees()).dividedBy(face.minus(half).cosineOfDegrees());
  }
}
