package wherefrom.logbook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wherefrom.engine.Arrangement;
import wherefrom.engine.Bank;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.CamBearingSpot;
import wherefrom.engine.Layout;
import wherefrom.engine.LifterType;
import wherefrom.engine.MainSpot;
import wherefrom.engine.RockerMount;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.entry.Act;
import wherefrom.job.entry.AtAssembly;
import wherefrom.job.entry.BackFromShop;
import wherefrom.job.entry.BackFromWashing;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.entry.BagMoved;
import wherefrom.job.entry.BigPartDecided;
import wherefrom.job.entry.BigPartMarked;
import wherefrom.job.entry.BigPartMoved;
import wherefrom.job.entry.BigPartsNamed;
import wherefrom.job.entry.BoltChecked;
import wherefrom.job.entry.BoltHole;
import wherefrom.job.entry.BoltTightened;
import wherefrom.job.entry.BudgetSet;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.entry.ChangePlanned;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.job.entry.CostDropped;
import wherefrom.job.entry.CostNoted;
import wherefrom.job.entry.CostState;
import wherefrom.job.entry.DebrisFound;
import wherefrom.job.entry.DecisionMade;
import wherefrom.job.entry.DecisionsAsked;
import wherefrom.job.entry.FeatureDecided;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.FiguresKept;
import wherefrom.job.entry.GasketsListed;
import wherefrom.job.entry.GoodsArrived;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.KindsTracked;
import wherefrom.job.entry.LimitTyped;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.entry.OfferTyped;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartFound;
import wherefrom.job.entry.PartLost;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartSort;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.entry.PhotoAdded;
import wherefrom.job.entry.PiecesCounted;
import wherefrom.job.entry.PlaceExcused;
import wherefrom.job.entry.PlanDropped;
import wherefrom.job.entry.PriceNoted;
import wherefrom.job.entry.ReadingsTaken;
import wherefrom.job.entry.Reidentified;
import wherefrom.job.entry.SectionClosed;
import wherefrom.job.entry.SentToShop;
import wherefrom.job.entry.SetDecided;
import wherefrom.job.entry.ShopLineAdded;
import wherefrom.job.entry.ShopLineBack;
import wherefrom.job.entry.SizeTyped;
import wherefrom.job.entry.SlotUnknown;
import wherefrom.job.entry.StartTicked;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.entry.SubjectPhotographed;
import wherefrom.job.entry.TagReissued;
import wherefrom.job.entry.TagsPrinted;
import wherefrom.job.entry.TakenBack;
import wherefrom.job.entry.TakenReading;
import wherefrom.job.entry.ToolListed;
import wherefrom.job.entry.TorqueCardBegun;
import wherefrom.job.entry.TorqueCardDropped;
import wherefrom.job.entry.ZeroChecked;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.BigPartName;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.TagType;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitSystem;
import wherefrom.rules.VerdictName;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.ShopWork;
import wherefrom.rules.debris.DebrisLook;
import wherefrom.rules.debris.DebrisPlace;
import wherefrom.rules.size.ChangeText;
import wherefrom.rules.size.GoodsSize;

/**
 * One example of every kind of entry, or more where one does not show all that a field can hold. A
 * twin with one cylinder a bank keeps the opening short.
 */
final class EveryEntry {
  private static final String PHOTO = "0123456789abcdef".repeat(4) + ".png";
  private static final Place PUSHROD =
      new Place(PartKind.PUSHROD, new ValveSpot(1, ValveSide.EXHAUST));
  private static final Place PISTON = new Place(PartKind.PISTON, new BoreSpot(2));
  private static final Place SHELL =
      new Place(PartKind.MAIN_SHELL, new MainSpot(1, ShellHalf.UPPER));
  private static final Place ROD_SHELL =
      new Place(PartKind.ROD_SHELL, new RodSpot(2, ShellHalf.LOWER));
  private static final Place CAM_BEARING = new Place(PartKind.CAM_BEARING, new CamBearingSpot(1));

  private EveryEntry() {}

  static List<JobEntry> all() {
    return Stream.of(
            build(),
            AfterStartEntries.all(),
            BuyingEntries.all(),
            AfterStartEntries.again(),
            List.of(besideAtShop()),
            untagged())
        .flatMap(List::stream)
        .toList();
  }

  /** A line of the slip that is of a big part. */
  private static JobEntry besideAtShop() {
    return new ShopLineAdded(
        2,
        1,
        "left head",
        1,
        "valve work",
        Optional.empty(),
        Optional.empty(),
        true,
        ShopWork.VALVES,
        List.of("left"),
        Optional.of(new Subject.Beside(TagType.BIG_PART, 10)));
  }

  /** A part without a tag, as it goes in and as it is stopped. */
  private static List<JobEntry> untagged() {
    String sentence = "This came from cylinder 1.";
    return List.of(
        new PartFitted(1, PUSHROD, "", Optional.empty(), true),
        new StopGiven(1, "3EX", VerdictName.WRONG_PLACE, sentence, true, true));
  }

  private static List<JobEntry> build() {
    return List.of(
        opened(),
        new KindsTracked(Set.of(PartKind.PISTON, PartKind.MAIN_SHELL), 3, List.of(PISTON, SHELL)),
        new TagsPrinted(TagType.PLACE_CARD, List.of(1, 2), "a4-48x25"),
        new TagReissued(1, 2, "burnt"),
        new PiecesCounted(2, 3),
        new PartOut(1),
        new PartLost(1, "under the bench"),
        new PartFound(1),
        new NoteAdded(0, "Größe, 部品, \"as found\"\nturned by hand"),
        new PhotoAdded(1, PHOTO, "the tip"),
        new SubjectPhotographed("lobe@1EX", "lobe-look", PHOTO, "nose"),
        new OffForWashing(1, 4),
        new BackFromWashing(1),
        new SentToShop(1, List.of(1, 2), "measure", ShopWork.CRACK_TEST),
        new BackFromShop(1, List.of(1, 2), "no crack"),
        new LookRecorded(1, "pushrod-roll", Look.SUSPECT, "wobbles"),
        new DecisionMade(1, Decision.REPLACE, "bent"),
        new SetDecided(List.of(1, 2), Decision.REUSE, "all good"),
        new DecisionsAsked(true),
        new FeatureLooked("lobe@1EX", "lobe-look", Look.FAIL, "pitted"),
        new ChangePlanned(
            1, ChangeText.read(ChangeKind.HEAD_MILLED, "left", "0.010 in", Unit.INCH)),
        new PlanDropped(1, "too dear"),
        new ChangeMade(2, Change.at(ChangeKind.PUSHROD_BENT, "1EX")),
        new CheckAnswered("R1:spring-load", Look.PASS, "open 130 lb"),
        new SlotUnknown(2, "tag washed off"),
        new ToolListed(
            "micrometer 0-1 in",
            Amount.of("0.0001", Unit.INCH),
            Amount.of("0.0002", Unit.INCH),
            Amount.of("0.0001", Unit.INCH)),
        new ZeroChecked("micrometer 0-1 in", Amount.of("-0.0001", Unit.INCH)),
        new ReadingsTaken(
            "#1",
            "pushrod-runout",
            "dial",
            List.of(
                new TakenReading("middle", Amount.of("0.0030", Unit.INCH)),
                new TakenReading("middle", Amount.of("0.07", Unit.MILLIMETRE))),
            true,
            "twice"),
        new LimitTyped(
            "pushrod-runout",
            "value",
            Optional.empty(),
            Optional.of(Amount.of("0.003", Unit.INCH)),
            "manual, page 6-12"),
        new LimitTyped(
            "pushrod-runout", "value", Optional.empty(), Optional.empty(), "manual, page 6-12"),
        new SizeTyped("rod-journal", Amount.of("2.1000", Unit.INCH), "manual, page 6-2"),
        new DebrisFound(DebrisPlace.PICKUP_SCREEN, DebrisLook.GREY_PASTE, "a smear"),
        new Reidentified(2, "chalk 7", "likely"),
        new ShopLineAdded(
            1,
            1,
            "block",
            1,
            "bore",
            Optional.of(Amount.of("3.900", Unit.INCH)),
            Optional.of(Amount.of("0.0005", Unit.INCH)),
            true,
            ShopWork.BORE,
            List.of("B1"),
            Optional.empty()),
        new ShopLineAdded(
            1,
            2,
            "sump",
            1,
            "wash",
            Optional.empty(),
            Optional.empty(),
            false,
            ShopWork.OTHER,
            List.of(),
            Optional.empty()),
        new ShopLineBack(1, 1, 1, Optional.of(Amount.of("3.9005", Unit.INCH)), "bored"),
        new ShopLineBack(1, 2, 1, Optional.empty(), "washed"),
        new CostNoted(
            1,
            Article.read("bore and hone"),
            "bore@B1",
            CostState.AVOIDED,
            24_050,
            2,
            "quoted by phone"),
        new CostDropped(1, "free"),
        new BudgetSet(150_000, 15, "EUR"),
        new PriceNoted(Article.read("lifters"), 1_250),
        new FiguresKept(
            "plan-now", "as it is", Map.of("bore", "3.900 in±0.0005 in", "crown", "flat")),
        new FiguresKept("plan-1", "", Map.of()),
        new TorqueCardBegun(
            1,
            "main caps",
            2,
            2,
            List.of(3, 1, 2, 4),
            "manual",
            "oiled",
            List.of(Amount.of("30", Unit.NEWTON_METRE), Amount.of("90", Unit.DEGREE)),
            "manual, page 6-20"),
        new BoltTightened(1, 2, 3, "AB", true),
        new BoltChecked(1, 3, "CD", false),
        new TorqueCardDropped(1, "loosened again"),
        new PartReplaced(
            1, 75, "bent", Optional.of(Amount.of("0.010", Unit.INCH)), PartSort.of("longer")),
        new PartReplaced(2, 76, "worn", Optional.empty(), PartSort.SAME),
        new PartFitted(1, PUSHROD),
        new PartFitted(2, ROD_SHELL, "all new", Optional.of(VerdictName.WRONG_PLACE)),
        new PartUnfitted(1, "moved"),
        new StopGiven(1, "M1U", VerdictName.WRONG_KIND, "This is a pushrod.", true),
        new StopGiven(0, "", VerdictName.NOT_ONE_OF_OURS, "This is not one of our tags.", false),
        new PlaceExcused(CAM_BEARING, "none in this engine"),
        new SectionClosed("valvetrain-left"),
        new TakenBack(55),
        new Act(List.of(new PartUnfitted(1, "moved"), new PartFitted(1, PUSHROD))),
        new BigPartsNamed(
            1,
            List.of(
                new BigPartName(BigPartKind.HEAD, "left", ""), BigPartName.own("dipstick tube"))),
        new BagFilled(
            3,
            "head bolts, long",
            1,
            "",
            10,
            List.of(
                new BoltHole(
                    1, Optional.of(20), Optional.of(50), Optional.of(Amount.of("2.50", Unit.INCH))),
                new BoltHole(2, Optional.empty(), Optional.empty(), Optional.empty())),
            "bolt, hardened washer",
            AtAssembly.SEALER),
        new BagFilled(4, "nuts", 0, "starter", 2, List.of(), "", AtAssembly.NOT_SAID),
        new BagMoved(3, Whereabouts.WASHING, 10, "one is bent"),
        new BigPartMoved(1, Whereabouts.AT_SHOP, "with the other"),
        new BigPartMarked(1, "cast 1234, a punch mark at the front"),
        new BigPartDecided(1, Decision.MACHINE, "warped"),
        new GasketsListed(true),
        new FeatureDecided("block@", Decision.REUSE, "no crack found"),
        new OfferTyped("Northside", Article.read("lifters"), 16, 8_050),
        new GoodsArrived(
            Article.read("rod shells"),
            GoodsSize.of(GoodsSize.Sense.UNDER, Amount.of("0.010", Unit.INCH)),
            16,
            "ten under",
            true),
        new StartTicked("oil", "30, with a zinc additive", true));
  }

  private static JobOpened opened() {
    return new JobOpened(
        "twin",
        123_456,
        new Layout(
            "twin",
            "a twin, invented",
            Arrangement.V,
            90,
            List.of(new Bank("left", List.of(1), "EI"), new Bank("right", List.of(2), "IE")),
            "left",
            List.of(1, 2),
            2,
            1,
            true,
            1,
            1,
            LifterType.ROLLER,
            RockerMount.SHAFT),
        Set.of(PartKind.PUSHROD, PartKind.ROD_SHELL),
        UnitSystem.METRIC,
        List.of(PUSHROD, ROD_SHELL),
        List.of(PUSHROD.spot(), SHELL.spot()));
  }
}
