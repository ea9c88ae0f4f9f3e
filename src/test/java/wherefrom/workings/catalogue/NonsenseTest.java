package wherefrom.workings.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.workings.Inputs;
import wherefrom.workings.MissingInputs;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingAnswer;
import wherefrom.workings.catalogue.bolt.Lubricant;
import wherefrom.workings.catalogue.compression.CombustionSpace;

class NonsenseTest {
  private static final String[] FLAT = {
    "bore=3.87in", "stroke=3.31in", "gasket-bore=3.97in", "gasket-thickness=0.04in"
  };

  private static String[] flat(String... more) {
    String[] all = java.util.Arrays.copyOf(FLAT, FLAT.length + more.length);
    System.arraycopy(more, 0, all, FLAT.length, more.length);
    return all;
  }

  private static void refuses(Nonsense nonsense, String field, String... words) {
    assertThat(nonsense.field()).isEqualTo(field);
    assertThat(nonsense.sentence()).contains(words);
  }

  @Test
  void negativeChamber() {
    refuses(
        Ask.nonsense("compression-ratio", flat("deck=0in", "piston-volume=0cc", "chamber=-72cc")),
        "chamber",
        "must be more than 0",
        "-72 cc");
  }

  @Test
  void domeLargerThanTheChamber() {
    refuses(
        Ask.nonsense("compression-ratio", flat("deck=0in", "piston-volume=-90cc", "chamber=70cc")),
        "piston-volume",
        "larger than the chamber");
  }

  @Test
  void pistonThroughTheHead() {
    refuses(
        Ask.nonsense("compression-ratio", flat("deck=-1in", "piston-volume=0cc", "chamber=70cc")),
        "deck",
        "no room");
  }

  @Test
  void ratioOutOfReach() {
    refuses(
        Ask.nonsense("chamber-for-ratio", flat("deck=1in", "piston-volume=0cc", "target=12")),
        "target",
        "cannot be reached");
  }

  @Test
  void faceAngleNotAboveHalfTheBankAngle() {
    refuses(
        Ask.nonsense("intake-correction", "cut=1mm", "bank-angle=90deg", "face-angle=45deg"),
        "face-angle",
        "half the bank angle");
    refuses(
        Ask.nonsense("intake-correction", "cut=1mm", "bank-angle=180deg", "face-angle=90deg"),
        "face-angle",
        "opposed");
  }

  @Test
  void millingCannotEnlargeAChamber() {
    refuses(
        Ask.nonsense("head-cut", "chamber-now=60cc", "chamber-wanted=64cc", "opening=0.16cc/thou"),
        "chamber-wanted",
        "larger");
  }

  @Test
  void journalLargerThanItsBearing() {
    refuses(
        Ask.nonsense("oil-clearance-bore", "inside=2.610in", "journal=2.612in"),
        "journal",
        "would not go into");
  }

  @Test
  void wornPastTheLastUndersize() {
    refuses(
        Ask.nonsense("next-undersize", "standard=2.748in", "smallest=2.700in"),
        "smallest",
        "machine shop");
  }

  @Test
  void springsThatCannotBe() {
    refuses(
        Ask.nonsense("coil-bind", "installed-height=1.1in", "solid-height=1.15in", "lift=0.4in"),
        "installed-height",
        "solid");
    refuses(
        Ask.nonsense("spring-rate", "height-1=1in", "load-1=40lb", "height-2=1.5in", "load-2=90lb"),
        "height-2",
        "shorter");
    refuses(
        Ask.nonsense("spring-rate", "height-1=1.5in", "load-1=90lb", "height-2=1in", "load-2=40lb"),
        "load-2",
        "more than load-1");
    refuses(
        Ask.nonsense(
            "spring-rate-by-wire",
            "wire=1in",
            "outside-diameter=1.5in",
            "active-coils=4",
            "modulus=80GPa"),
        "outside-diameter",
        "twice the wire");
    refuses(
        Ask.nonsense(
            "spring-loads",
            "rate=200lb/in",
            "load=10lb",
            "at-height=1.5in",
            "installed-height=1.7in",
            "lift=0.4in"),
        "installed-height",
        "loose");
  }

  @Test
  void lashThatEatsTheLift() {
    refuses(
        Ask.nonsense("valve-lift", "lobe-lift=0.1in", "rocker-ratio=1.5", "lash=0.2in"),
        "lash",
        "never open");
  }

  @Test
  void stripNarrowerThanItself() {
    refuses(
        Ask.nonsense("strip-clearance", "strand=0.010in", "width=0.008in"),
        "width",
        "before pressing");
  }

  @Test
  void wrongUnitsAndKeysAndWords() {
    refuses(Ask.nonsense("ring-gap", "bore=72cc", "gap-per-bore=0.004"), "bore", "length", "mm");
    refuses(Ask.nonsense("ring-gap", "boar=72mm"), "boar", "no input", "gap-per-bore");
    refuses(Ask.nonsense("ring-gap", "bore=wide"), "bore", "figure");
    refuses(Ask.nonsense("ring-gap", "bore=3.87"), "bore", "no unit");
    refuses(Ask.nonsense("ring-gap", "bore=3 7/8in"), "bore", "one figure");
    refuses(Ask.nonsense("ring-gap", "bore"), "bore", "key=value");
    refuses(Ask.nonsense("ring-gap", "bore=3.87in", "bore=3.87in"), "bore", "twice");
    refuses(
        Ask.nonsense("swept-volume", "bore=3.87in", "stroke=3in", "cylinders=7.5"),
        "cylinders",
        "whole");
    refuses(
        Ask.nonsense("torque", "diameter=0.4in", "preload=5000lb", "lubricant=butter"),
        "lubricant",
        "dry, oiled, own");
    refuses(
        Ask.nonsense("swept-volume", "bore=4000mm", "stroke=3in", "cylinders=8"),
        "bore",
        "cannot be more than 2000 mm");
  }

  @Test
  void missingInputsAreAskedForByName() {
    for (Working working : Workings.all()) {
      WorkingAnswer answer = working.compute(Inputs.empty());
      assertThat(answer).as(working.key()).isInstanceOf(MissingInputs.class);
      assertThat(((MissingInputs) answer).inputs()).as(working.key()).isNotEmpty();
    }
    MissingInputs missing = (MissingInputs) Ask.answer("ring-gap", "bore=3.87in");
    assertThat(missing.sentence()).contains("gap per bore");
  }

  @Test
  void halfACreviceAsksForTheOtherHalf() {
    MissingInputs missing =
        (MissingInputs)
            Ask.answer(
                "compression-ratio",
                flat("deck=0in", "piston-volume=0cc", "chamber=70cc", "crevice-height=0.3in"));
    assertThat(missing.inputs()).containsExactly(CombustionSpace.CREVICE_GAP);
  }

  @Test
  void ownLubricantAsksForItsNutFactor() {
    assertThat(Ask.answer("torque", "diameter=10mm", "preload=30kN", "lubricant=own"))
        .isEqualTo(new MissingInputs(List.of(Lubricant.NUT_FACTOR)));
  }

  @Test
  void everyCardSaysWhatItIs() {
    for (Working working : Workings.all()) {
      assertThat(working.card().title()).isNotBlank();
      assertThat(working.card().formula()).contains(working.key().equals("accept") ? "u" : "=");
      assertThat(working.card().source().text()).isNotBlank();
      assertThat(working.card().limits()).isNotEmpty();
      assertThat(working.card().inputs())
          .allSatisfy(input -> assertThat(input.meaning()).endsWith("."));
      assertThat(Workings.find(working.key())).contains(working);
    }
  }
}
