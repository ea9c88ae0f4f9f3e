package wherefrom.workings.catalogue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.Inputs;

/** One sample for every working, its formula written anew. */
final class Samples {
  /** Six marks whose differences all differ, so that no two readings compete for an extreme. */
  private static final List<Integer> MARKS = List.of(0, 1, 4, 10, 12, 17);

  private Samples() {}

  static List<Sample> all() {
    return Stream.of(
            compression(),
            heads(),
            intake(),
            valvetrain(),
            springs(),
            bearings(),
            fasteners(),
            shapes(),
            others())
        .flatMap(List::stream)
        .toList();
  }

  private static Big disc(Big diameter) {
    return Big.PI.times(diameter).times(diameter).over(4);
  }

  private static Big half(Big angle) {
    return angle.over(2);
  }

  private static Sample space(Sample sample) {
    return sample
        .length("bore", 70, 130, 0.02)
        .length("stroke", 60, 120, 0.05)
        .length("gasket-bore", 80, 140, 0.2)
        .length("gasket-thickness", 0.3, 2, 0.02)
        .length("deck", -0.5, 2, 0.02)
        .volume("piston-volume", -10, 20, 0.2)
        .also(Samples::crevice);
  }

  private static Inputs crevice(Random random) {
    if (random.nextBoolean()) {
      return Inputs.empty();
    }
    Amount height = Amount.of(5 + random.nextInt(5), Unit.MILLIMETRE);
    Amount gap = new Amount(BigDecimal.valueOf(30 + random.nextInt(60), 2), Unit.MILLIMETRE);
    return Inputs.empty()
        .with("crevice-height", Sample.spread(random, height, 0.1))
        .with("crevice-gap", Sample.spread(random, gap, 0.005));
  }

  private static Big swept(Sample.Given x) {
    return disc(x.get("bore")).times(x.get("stroke"));
  }

  private static Big gasketPistonCrevice(Sample.Given x) {
    Big sum =
        disc(x.get("gasket-bore")).times(x.get("gasket-thickness")).plus(x.get("piston-volume"));
    if (!x.has("crevice-height")) {
      return sum;
    }
    Big r = x.get("crevice-gap");
    // A ring of mean diameter B − r and width r.
    Big ring = Big.PI.times(x.get("bore").minus(r)).times(r);
    return sum.plus(ring.times(x.get("crevice-height")));
  }

  private static Big deckSpace(Sample.Given x, Big deck) {
    return disc(x.get("bore")).times(deck);
  }

  private static Big clearance(Sample.Given x, Big chamber, Big deck) {
    return chamber.plus(gasketPistonCrevice(x)).plus(deckSpace(x, deck));
  }

  private static Big ratio(Sample.Given x, Big clearance) {
    return Big.of(1).plus(swept(x).over(clearance));
  }

  private static Big clearanceForTarget(Sample.Given x) {
    return swept(x).over(x.get("target").minus(Big.of(1)));
  }

  private static Big chamberForTarget(Sample.Given x) {
    return clearanceForTarget(x).minus(gasketPistonCrevice(x)).minus(deckSpace(x, x.get("deck")));
  }

  private static Big deckForTarget(Sample.Given x) {
    Big needed = clearanceForTarget(x).minus(x.get("chamber")).minus(gasketPistonCrevice(x));
    return needed.over(disc(x.get("bore")));
  }

  private static Big deckAfter(Sample.Given x) {
    return x.get("deck").minus(x.get("deck-cut"));
  }

  private static Big chamberAfter(Sample.Given x) {
    return x.get("chamber").minus(x.get("head-cut").times(x.get("opening")));
  }

  private static List<Sample> compression() {
    return List.of(
        new Sample("swept-volume")
            .length("bore", 50, 150, 0.05)
            .length("stroke", 50, 150, 0.1)
            .count("cylinders", 1, 12)
            .gives("cylinder", Samples::swept)
            .gives("engine", x -> swept(x).times(x.get("cylinders"))),
        space(new Sample("compression-ratio"))
            .volume("chamber", 40, 120, 0.5)
            .gives("swept", Samples::swept)
            .gives("clearance", x -> clearance(x, x.get("chamber"), x.get("deck")))
            .gives("ratio", x -> ratio(x, clearance(x, x.get("chamber"), x.get("deck")))),
        space(new Sample("chamber-for-ratio"))
            .number("target", 3, 5, 2, 0.02)
            .volume("chamber", 40, 120, 0.5)
            .gives("chamber", Samples::chamberForTarget)
            .gives("clearance", Samples::clearanceForTarget)
            .gives("remove", x -> x.get("chamber").minus(chamberForTarget(x))),
        space(new Sample("deck-cut"))
            .number("target", 7, 12, 2, 0.02)
            .volume("chamber", 40, 120, 0.5)
            .gives("cut", x -> x.get("deck").minus(deckForTarget(x)))
            .gives("deck", Samples::deckForTarget)
            .gives("piston-to-head", x -> deckForTarget(x).plus(x.get("gasket-thickness"))),
        space(new Sample("ratio-after-cut"))
            .volume("chamber", 50, 120, 0.5)
            .length("head-cut", 0, 1.5, 0.02)
            .opening("opening", 3, 8, 0.1)
            .length("deck-cut", 0, 0.5, 0.02)
            .gives("ratio", x -> ratio(x, clearance(x, chamberAfter(x), deckAfter(x))))
            .gives("chamber", Samples::chamberAfter)
            .gives("clearance", x -> clearance(x, chamberAfter(x), deckAfter(x)))
            .gives("deck", Samples::deckAfter)
            .gives("piston-to-head", x -> deckAfter(x).plus(x.get("gasket-thickness"))));
  }

  private static List<Sample> heads() {
    return List.of(
        new Sample("head-cut")
            .volume("chamber-now", 72, 110, 0.5)
            .volume("chamber-wanted", 40, 70, 0.5)
            .opening("opening", 3, 8, 0.1)
            .gives(
                "cut",
                x -> x.get("chamber-now").minus(x.get("chamber-wanted")).over(x.get("opening"))),
        new Sample("opening-by-pour")
            .volume("poured", 5, 20, 0.2)
            .length("depth", 1, 4, 0.02)
            .gives("opening", x -> x.get("poured").over(x.get("depth"))));
  }

  /** Tangents instead of the sines of differences. */
  private static List<Sample> intake() {
    return List.of(
        new Sample("intake-correction")
            .length("cut", 0.1, 3, 0.02)
            .angle("bank-angle", 50, 100, 0.2)
            .angle("face-angle", 65, 105, 0.2)
            .gives(
                "face",
                x ->
                    x.get("cut")
                        .over(
                            cotangent(half(x.get("bank-angle")))
                                .times(x.get("face-angle").sine())
                                .minus(x.get("face-angle").cosine())))
            .gives(
                "rails",
                x -> {
                  Big beta = half(x.get("bank-angle"));
                  return x.get("cut")
                      .over(beta.cosine().minus(cotangent(x.get("face-angle")).times(beta.sine())));
                })
            .gives(
                "slide",
                x -> {
                  Big alpha = x.get("face-angle");
                  Big cotangent = cotangent(half(x.get("bank-angle")));
                  return x.get("cut").over(cotangent.times(alpha.cosine()).plus(alpha.sine()));
                }));
  }

  private static Big cotangent(Big angle) {
    return angle.cosine().over(angle.sine());
  }

  private static List<Sample> valvetrain() {
    return List.of(
        new Sample("valve-lift")
            .length("lobe-lift", 5, 12, 0.01)
            .number("rocker-ratio", 1.2, 1.8, 2, 0.01)
            .length("lash", 0, 0.6, 0.02)
            .gives(
                "lift", x -> x.get("lobe-lift").times(x.get("rocker-ratio")).minus(x.get("lash"))),
        new Sample("coil-bind")
            .length("installed-height", 40, 50, 0.1)
            .length("lift", 8, 14, 0.05)
            .number("coils", 4, 7, 1, 0.05)
            .length("wire", 3, 5, 0.02)
            .gives("solid", x -> x.get("coils").times(x.get("wire")))
            .gives(
                "margin",
                x ->
                    x.get("installed-height")
                        .minus(x.get("coils").times(x.get("wire")))
                        .minus(x.get("lift"))),
        new Sample("retainer-to-seal")
            .length("seal-gap", 10, 16, 0.05)
            .length("lift", 8, 14, 0.05)
            .gives("margin", x -> x.get("seal-gap").minus(x.get("lift"))),
        new Sample("pushrod-length")
            .length("base-radius-loss", -1, 1, 0.01)
            .length("lowering", -0.5, 2, 0.02)
            .angle("pushrod-tilt", 0, 20, 0.5)
            .length("tip-rise", -0.5, 1, 0.02)
            .number("rocker-ratio", 1.2, 1.8, 2, 0.01)
            .gives(
                "change",
                x ->
                    x.get("base-radius-loss")
                        .minus(x.get("lowering").times(x.get("pushrod-tilt").cosine()))
                        .minus(x.get("tip-rise").over(x.get("rocker-ratio")))),
        new Sample("piston-to-valve")
            .length("clearance-now", 2, 5, 0.1)
            .length("lowering", -0.5, 1.5, 0.02)
            .angle("valve-tilt", 3, 30, 0.5)
            .choice("crown", "flat", "pocket")
            .length("seat-sink", 0, 0.8, 0.02)
            .choice("side", "intake", "exhaust")
            .gives("clearance", Samples::valveRoom));
  }

  private static Big valveRoom(Sample.Given x) {
    Big cosine = x.get("valve-tilt").cosine();
    Big drop = x.get("lowering");
    Big along = x.chose("crown", "flat") ? drop.over(cosine) : drop.times(cosine);
    return x.get("clearance-now").plus(x.get("seat-sink")).minus(along);
  }

  private static List<Sample> springs() {
    return List.of(
        new Sample("spring-rate")
            .length("height-1", 40, 50, 0.05)
            .length("height-2", 25, 35, 0.05)
            .force("load-1", 200, 400, 4)
            .force("load-2", 800, 1600, 8)
            .gives(
                "rate",
                x ->
                    x.get("load-2")
                        .minus(x.get("load-1"))
                        .over(x.get("height-1").minus(x.get("height-2")))),
        new Sample("spring-rate-by-wire")
            .length("wire", 3, 6, 0.01)
            .length("outside-diameter", 25, 40, 0.05)
            .number("active-coils", 3, 8, 1, 0.05)
            .figure("modulus", 500, Unit.GIGAPASCAL, 75, 82)
            .gives(
                "rate",
                x ->
                    x.get("modulus")
                        .times(x.get("wire").power(4))
                        .over(
                            x.get("outside-diameter")
                                .minus(x.get("wire"))
                                .power(3)
                                .times(x.get("active-coils"))
                                .times(8))),
        new Sample("spring-loads")
            .figure("rate", 0.5, Unit.NEWTON_PER_MILLIMETRE, 20, 70)
            .force("load", 400, 600, 5)
            .length("at-height", 42, 46, 0.05)
            .length("installed-height", 41, 47, 0.05)
            .length("lift", 8, 14, 0.05)
            .gives("seat", Samples::seatLoad)
            .gives("open", x -> seatLoad(x).plus(x.get("rate").times(x.get("lift")))));
  }

  private static Big seatLoad(Sample.Given x) {
    Big travel = x.get("at-height").minus(x.get("installed-height"));
    return x.get("load").plus(x.get("rate").times(travel));
  }

  private static List<Sample> bearings() {
    return List.of(
        bearing(
            new Sample("oil-clearance")
                .length("housing", 60, 60.02, 0.001)
                .length("upper-wall", 1.99, 2, 0.001)
                .length("lower-wall", 1.99, 2, 0.001)
                .length("journal", 55.8, 55.95, 0.001),
            x -> x.get("housing").minus(x.get("upper-wall").plus(x.get("lower-wall")))),
        bearing(
            new Sample("oil-clearance-one-wall")
                .length("housing", 60, 60.02, 0.001)
                .length("wall", 1.99, 2, 0.001)
                .length("journal", 55.8, 55.95, 0.001),
            x -> x.get("housing").minus(x.get("wall").times(2))),
        bearing(
            new Sample("oil-clearance-bore")
                .length("inside", 56.02, 56.05, 0.001)
                .length("journal", 55.9, 55.98, 0.001),
            x -> x.get("inside")),
        new Sample("strip-clearance")
            .length("strand", 0.2, 0.4, 0.001)
            .length("width", 0.8, 2.5, 0.01)
            .gives("clearance", x -> disc(x.get("strand")).over(x.get("width"))),
        new Sample("strip-width")
            .length("strand", 0.2, 0.4, 0.001)
            .length("clearance", 0.04, 0.1, 0.0005)
            .gives("width", x -> disc(x.get("strand")).over(x.get("clearance"))));
  }

  private static Sample bearing(
      Sample sample, java.util.function.Function<Sample.Given, Big> inside) {
    return sample
        .gives("clearance", x -> inside.apply(x).minus(x.get("journal")))
        .gives("per-diameter", x -> inside.apply(x).over(x.get("journal")).minus(Big.of(1)));
  }

  private static List<Sample> fasteners() {
    return List.of(
        new Sample("torque")
            .length("diameter", 6, 16, 0.02)
            .force("preload", 10000, 80000, 500)
            .choice("lubricant", "own")
            .number("k", 0.1, 0.25, 3, 0.003)
            .gives("torque", x -> x.get("k").times(x.get("diameter")).times(x.get("preload"))),
        new Sample("preload")
            .length("diameter", 6, 16, 0.02)
            .figure("torque", 500, Unit.NEWTON_METRE, 20, 150)
            .choice("lubricant", "own")
            .number("k", 0.1, 0.25, 3, 0.002)
            .gives("preload", x -> x.get("torque").over(x.get("k")).over(x.get("diameter"))),
        new Sample("angle-stage")
            .length("pitch", 1, 2.5, 0.005)
            .angle("angle", 30, 180, 2)
            .gives("travel", x -> x.get("pitch").times(x.get("angle")).over(360)));
  }

  private static List<Sample> others() {
    return List.of(
        new Sample("ring-gap")
            .length("bore", 70, 130, 0.05)
            .number("gap-per-bore", 0.003, 0.006, 4, 0.0001)
            .gives("gap", x -> x.get("gap-per-bore").times(x.get("bore"))),
        new Sample("ring-gap-change")
            .length("bore-change", 0.01, 0.5, 0.005)
            .gives("change", x -> x.get("bore-change").times(Big.PI)),
        new Sample("cylinder-compression")
            .pressure("dry", 0.4, 1.2, 0.01)
            .pressure("highest", 0.8, 1.3, 0.01)
            .pressure("wet", 0.4, 1.4, 0.01)
            .gives("share", x -> x.get("dry").over(x.get("highest")))
            .gives("rise", x -> x.get("wet").over(x.get("dry")).minus(Big.of(1))),
        new Sample("leak-down")
            .pressure("supply", 0.6, 0.8, 0.01)
            .pressure("held", 0.2, 0.45, 0.01)
            .gives("leak", x -> Big.of(1).minus(x.get("held").over(x.get("supply")))),
        new Sample("chain-deflection")
            .length("inward", -12, -4, 0.1)
            .length("outward", 3, 10, 0.1)
            .gives("deflection", x -> x.get("outward").minus(x.get("inward"))),
        new Sample("cam-slack")
            .angle("forward", 4, 9, 0.2)
            .angle("backward", -1, 1, 0.2)
            .gives("slack", x -> x.get("forward").minus(x.get("backward"))),
        new Sample("top-dead-center")
            .angle("before", -40, -20, 0.2)
            .angle("after", 15, 45, 0.2)
            .gives("center", x -> x.get("before").plus(x.get("after")).over(2)),
        new Sample("accept")
            .length("reading", 0.02, 0.07, 0)
            .length("uncertainty", 0.001, 0.004, 0)
            .length("lower", 0.02, 0.03, 0)
            .length("upper", 0.05, 0.07, 0)
            .gives("guard-band", Samples::guard)
            .gives("accept-from", x -> x.get("lower").plus(guard(x)))
            .gives("reject-below", x -> x.get("lower").minus(guard(x)))
            .gives("accept-to", x -> x.get("upper").minus(guard(x)))
            .gives("reject-above", x -> x.get("upper").plus(guard(x))),
        new Sample("next-undersize")
            .length("standard", 55, 55.02, 0.001)
            .length("smallest", 54.97, 54.99, 0.001)
            .gives("clean-up", x -> x.get("smallest").times(2).minus(x.get("standard"))));
  }

  private static Big guard(Sample.Given x) {
    return x.get("uncertainty").times(Big.of("1.65"));
  }

  private static List<Sample> shapes() {
    return List.of(
        new Sample("bore-shape")
            .also(random -> marked(random, BORE_READINGS, "nominal", -3))
            .gives("out-of-round", x -> gap(x, 0).max(gap(x, 1)).max(gap(x, 2)))
            .gives(
                "taper",
                x ->
                    along(x, BORE_READINGS.subList(0, 3))
                        .max(along(x, BORE_READINGS.subList(3, 6))))
            .gives("wear", Samples::boreWear)
            .gives("clean-up", x -> x.get("nominal").plus(boreWear(x).times(2))),
        new Sample("journal-shape")
            .also(random -> marked(random, JOURNAL_READINGS, "standard", 20))
            .gives(
                "out-of-round",
                x ->
                    gap(x, "front-vertical", "front-horizontal")
                        .max(gap(x, "rear-vertical", "rear-horizontal")))
            .gives(
                "taper",
                x ->
                    gap(x, "front-vertical", "rear-vertical")
                        .max(gap(x, "front-horizontal", "rear-horizontal")))
            .gives("smallest", x -> smallest(x, JOURNAL_READINGS))
            .gives("wear", x -> x.get("standard").minus(smallest(x, JOURNAL_READINGS))));
  }

  private static final List<String> BORE_READINGS =
      List.of(
          "thrust-top",
          "thrust-middle",
          "thrust-bottom",
          "axial-top",
          "axial-middle",
          "axial-bottom");
  private static final List<String> JOURNAL_READINGS =
      List.of("front-vertical", "front-horizontal", "rear-vertical", "rear-horizontal");

  private static Inputs marked(Random random, List<String> readings, String size, int sizeMark) {
    boolean inch = random.nextBoolean();
    Unit unit = inch ? Unit.INCH : Unit.MILLIMETRE;
    BigDecimal step = new BigDecimal(inch ? "0.0004" : "0.01");
    BigDecimal base = new BigDecimal(inch ? "3.8700" : "98.298");
    List<Integer> marks = new ArrayList<>(MARKS);
    Collections.shuffle(marks, random);
    Inputs result = Inputs.empty();
    for (int i = 0; i < readings.size(); i++) {
      BigDecimal value = base.add(step.multiply(BigDecimal.valueOf(marks.get(i))));
      result = result.with(readings.get(i), Sample.spread(random, new Amount(value, unit), 0.001));
    }
    BigDecimal nominal = base.add(step.multiply(BigDecimal.valueOf(sizeMark)));
    return result.with(size, Sample.spread(random, new Amount(nominal, unit), 0.001));
  }

  private static Big gap(Sample.Given x, int level) {
    return gap(x, BORE_READINGS.get(level), BORE_READINGS.get(level + 3));
  }

  private static Big gap(Sample.Given x, String one, String other) {
    return x.get(one).minus(x.get(other)).abs();
  }

  private static Big along(Sample.Given x, List<String> readings) {
    Big largest = readings.stream().map(x::get).reduce(Big::max).orElseThrow();
    return largest.minus(smallest(x, readings));
  }

  private static Big boreWear(Sample.Given x) {
    Big largest = BORE_READINGS.stream().map(x::get).reduce(Big::max).orElseThrow();
    return largest.minus(x.get("nominal"));
  }

  private static Big smallest(Sample.Given x, List<String> readings) {
    return readings.stream().map(x::get).reduce(Big::min).orElseThrow();
  }
}
