package wherefrom.ui.takeapart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import wherefrom.inspection.Check;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.parts.Action;
import wherefrom.parts.Part;
import wherefrom.rules.Cue;
import wherefrom.text.Words;
import wherefrom.ui.app.CautionScreen;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.app.TypedCode;
import wherefrom.ui.photos.PhotoTaking;
import wherefrom.ui.tray.TrayPurpose;
import wherefrom.ui.tray.TrayTaking;

/** What the keys of taking apart do with the part that is shown, and besides. */
final class PartActs {
  private final ScreenContext context;
  private final TakeApartModel model;
  private final PartRemarks remarks;
  private final Consumer<Optional<Cue>> answered;

  PartActs(ScreenContext context, TakeApartModel model, Consumer<Optional<Cue>> answered) {
    this.context = context;
    this.model = model;
    this.remarks = new PartRemarks(context.getJob());
    this.answered = answered;
  }

  /** Does something with the part that is shown; says so where all are out and none is. */
  private void onPart(Consumer<Part> deed) {
    model
        .subject()
        .ifPresentOrElse(
            deed, () -> context.say("Every part came out. Scan the part that you mean first."));
  }

  private void told(Supplier<String> deed) {
    context.attempt(
        () -> {
          String said = deed.get();
          context.navigator().changed();
          context.say(said);
        });
  }

  void note() {
    onPart(
        part ->
            context
                .navigator()
                .open(
                    () ->
                        new TextEntryScreen(
                            context,
                            "Note: " + model.name(part).words(),
                            "",
                            text -> told(() -> remarks.note(part, text)))));
  }

  void photo() {
    onPart(part -> PhotoTaking.ask(context, part));
  }

  /** By which of its quick tests the part is suspect. */
  void suspect() {
    onPart(
        part -> {
          List<Choice<Check>> choices =
              remarks.checks(part).stream()
                  .map(check -> new Choice<>(check, PartRemarks.fault(check), check.title()))
                  .toList();
          context
              .navigator()
              .open(
                  () ->
                      new ChoiceScreen<>(
                          context,
                          "What is suspect? " + Words.capital(model.name(part).words()),
                          choices,
                          check -> told(() -> remarks.suspect(part, check))));
        });
  }

  void typeCode() {
    TypedCode.ask(context, scanned -> answered.accept(model.scan(scanned.getFound())));
  }

  void sources() {
    context.navigator().open(() -> new CautionScreen(context, model.cautions()));
  }

  /** The cautions while a big part comes off. */
  void sources(BigPartRecord lead) {
    context.navigator().open(() -> new CautionScreen(context, model.cautions(lead)));
  }

  /** What has no key of its own. */
  void more() {
    List<Choice<Runnable>> more = new ArrayList<>();
    if (NextView.isNamedOnTag(context.touch())) {
      more.add(new Choice<>(this::photo, "Photo", "of the part that is shown"));
    }
    more(more);
  }

  /** The same where the part has but one key. */
  void moreOfPart() {
    String part = model.subject().map(one -> model.name(one).inLine()).orElse("the part");
    List<Choice<Runnable>> more = new ArrayList<>();
    more.add(new Choice<>(this::photo, "Photo", "of " + part));
    more.add(new Choice<>(this::note, "Note", "on " + part));
    more(more);
  }

  private void more(List<Choice<Runnable>> more) {
    if (context.touch().isLarge()) {
      more.add(new Choice<>(this::sources, "Cautions", "what can hurt at this step"));
      more.add(new Choice<>(this::typeCode, "Type code", "the six digits on the tag"));
    }
    more.add(new Choice<>(this::later, "Later", "the next part waits, another is shown"));
    more.add(
        new Choice<>(
            () -> TrayTaking.ask(context, TrayPurpose.OUT), "Several in one photo", "all are out"));
    more.add(
        new Choice<>(
            () -> context.navigator().show(ScreenId.BAGS),
            "Bags and big parts",
            "what is off, in which bag"));
    more.add(
        new Choice<>(this::pieces, "Several pieces, one tag", "say how many hang on its wire"));
    more.add(
        new Choice<>(
            this::order, "Change the order", "now: " + context.settings().outOrder().words()));
    context.navigator().open(() -> new ChoiceScreen<>(context, "More", more, Runnable::run));
  }

  private void later() {
    answered.accept(model.act(Action.SKIP));
  }

  private void pieces() {
    onPart(
        part ->
            context
                .navigator()
                .open(
                    () ->
                        NumberEntryScreen.digits(
                            context,
                            "Pieces: " + model.name(part).words(),
                            "How many pieces hang on its wire, under one tag?",
                            2,
                            count -> told(() -> remarks.pieces(part, count)))));
  }

  private void order() {
    List<Choice<OutOrder>> orders =
        List.of(OutOrder.values()).stream()
            .map(order -> new Choice<>(order, order.words(), told(order)))
            .toList();
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context,
                    "What comes out next?",
                    Choice.now(orders, context.settings().outOrder()),
                    this::ordered));
  }

  private static String told(OutOrder order) {
    return switch (order) {
      case CYLINDER -> "then the next cylinder by its number";
      case BANK -> "then its neighbor on the same bank";
      case KIND -> "all rockers, then all pushrods";
    };
  }

  private void ordered(OutOrder order) {
    context.change(context.settings().withOutOrder(order));
    answered.accept(Optional.empty());
  }
}
