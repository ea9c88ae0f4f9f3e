package wherefrom.demo;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.change.Planning;
import wherefrom.job.decide.Deciding;
import wherefrom.job.entry.CostState;
import wherefrom.job.inspect.DebrisBook;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.numbers.PlanBook;
import wherefrom.job.shop.MachineShop;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.debris.DebrisLook;
import wherefrom.rules.debris.DebrisPlace;
import wherefrom.rules.debris.Opening;
import wherefrom.rules.size.ChangeText;

/** Debris, plans, decisions, the visit to the shop and the money of the demo. Invented. */
final class DemoPlans {
  private final OpenJob job;

  DemoPlans(OpenJob job) {
    this.job = job;
  }

  void debris() {
    DebrisBook book = new DebrisBook(job);
    book.found(DebrisPlace.MAGNETIC_PLUG, DebrisLook.GREY_PASTE, "a thin film");
    book.found(DebrisPlace.PAN, DebrisLook.MAGNETIC_FLAKES, "a few needles by the drain plug");
    book.opened(Opening.FILTER, Look.PASS, "");
    book.opened(Opening.ALL_BEARINGS, Look.PASS, "even gray bands");
  }

  void toTheShop() {
    MachineShop shop = new MachineShop(job);
    List<Integer> caps =
        Stream.of("rod-cap@R4L", "rod-cap@R5L").map(place -> part(place).item()).toList();
    done(shop.send(1, caps, "check the big ends for round"));
    done(shop.add(1, "crankshaft", 1, "polish the mains to", "2.6092", "0.0003", false));
    done(shop.add(1, "cylinder head", 2, "skim flat, 0.006 in at most", "", "", false));
    done(shop.add(1, "head bolts", 20, "come back with the heads", "", "", true));
  }

  void crankBack() {
    MachineShop shop = new MachineShop(job);
    done(shop.backByCount(1, 1, 1, "2.6091", "polished"));
    done(shop.backByCount(1, 3, 18, "", "two are still on the shop's bench"));
    Planning planning = new Planning(job);
    planning.make(Change.of(ChangeKind.CRANK_POLISHED));
  }

  private static void done(MachineShop.Answer answer) {
    if (answer instanceof MachineShop.Answer.Refused refused) {
      throw new IllegalStateException(refused.sentence());
    }
  }

  /** The checks that hold the shells are passed. */
  void checks() {
    Planning planning = new Planning(job);
    planning.openChecks().stream()
        .filter(check -> check.consequence().effect().isCheck())
        .filter(check -> check.consequence().places().stream().anyMatch(DemoPlans::isShell))
        .map(check -> check.consequence().key())
        .toList()
        .forEach(check -> planning.answer(check, Look.PASS, "done"));
  }

  private static boolean isShell(Place place) {
    return place.kind() == PartKind.ROD_SHELL || place.kind() == PartKind.MAIN_SHELL;
  }

  void plans() {
    Planning planning = new Planning(job);
    planning.plan(Change.of(ChangeKind.NEW_FLAT_CAM));
    planning.plan(ChangeText.read(ChangeKind.HEAD_MILLED, "left", "0.006 in", Unit.INCH));
    PlanBook book = new PlanBook(job);
    Stream.of(
            "bore=3.870in",
            "stroke=3.310in",
            "chamber=64cc±0.5cc",
            "gasket-bore=3.970in",
            "gasket-thickness=0.038in",
            "deck=0.025in",
            "piston-volume=5cc",
            "target=9.0")
        .map(figure -> figure.split("=", 2))
        .forEach(figure -> book.set(0, figure[0], figure[1]));
  }

  void decisions() {
    decide(PartKind.MAIN_SHELL, Decision.REUSE, "measured, even bands");
    decide(PartKind.MAIN_CAP, Decision.REUSE, "numbers agree");
    decide(PartKind.ROD_SHELL, Decision.REUSE, "even bands");
    decide(PartKind.ROD_CAP, Decision.REUSE, "numbers agree");
    decide(PartKind.LIFTER, Decision.REPLACE, "one foot is hollow, its lobe is gone");
    Deciding deciding = new Deciding(job);
    deciding.decide(part("pushrod@3EX").item(), Decision.REPLACE, "bent");
    deciding.decide(part("spring@4EX").item(), Decision.REPLACE, "short, and weak");
    List<Integer> good =
        job.state().parts().stream()
            .map(PartRecord::part)
            .filter(part -> part.kind() == PartKind.SPRING || part.kind() == PartKind.PUSHROD)
            .filter(part -> job.state().getPart(part.item()).decision().isEmpty())
            .filter(
                part ->
                    deciding
                        .propose(part.item())
                        .decision()
                        .equals(java.util.Optional.of(Decision.REUSE)))
            .map(Part::item)
            .toList();
    deciding.decide(good, Decision.REUSE, "every test passed");
  }

  private void decide(PartKind kind, Decision decision, String reason) {
    List<Integer> items =
        job.state().parts().stream()
            .filter(part -> part.where() != Whereabouts.RETIRED)
            .map(PartRecord::part)
            .filter(part -> part.kind() == kind)
            .map(Part::item)
            .toList();
    if (new Deciding(job).decide(items, decision, reason)
        instanceof Deciding.Answer.Refused refused) {
      throw new IllegalStateException(refused.sentence());
    }
  }

  void money() {
    MoneyBook book = new MoneyBook(job);
    book.setBudget("1000", 15, "EUR");
    note(book, "paper, oil, cleaner", "", CostState.PAID, "46.50", 0);
    note(book, "gasket set", "", CostState.PAID, "118.00", 0);
    note(book, "crank polished", "crank", CostState.PAID, "85.00", 0);
    note(book, "heads skimmed", "head", CostState.COMMITTED, "140.00", 0);
    note(book, "hot tank", "", CostState.COMMITTED, "60.00", 0);
    note(book, "oil pump", "", CostState.QUOTED, "72.00", 0);
    note(book, "bearing shells", "main-shell", CostState.AVOIDED, "138.00", 0);
    note(book, "cam", "camshaft", CostState.QUOTED, "165.00", 1);
    for (String price :
        List.of("lifters=9.80", "valve springs=6.20", "pushrods=8.40", "cam bearings=11.00")) {
      String[] pair = price.split("=", 2);
      book.setPrice(Article.read(pair[0]), pair[1]);
    }
  }

  private static void note(
      MoneyBook book, String what, String about, CostState state, String amount, int plan) {
    if (book.note(0, what, about, state, amount, plan, "")
        instanceof MoneyBook.Answer.Refused refused) {
      throw new IllegalStateException(String.format(Locale.ROOT, "%s: %s", what, refused));
    }
  }

  private Part part(String place) {
    return job.state().findOwner(Place.find(place).orElseThrow()).orElseThrow();
  }
}
