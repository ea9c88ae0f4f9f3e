package wherefrom.ui.part;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import wherefrom.job.handling.Handling;
import wherefrom.job.handling.HandlingOutcome;
import wherefrom.job.shop.MachineShop;
import wherefrom.rules.WayOut;
import wherefrom.ui.app.BackAsking;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.ReasonAsking;
import wherefrom.ui.app.ReplaceAsking;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.changes.ConsequenceScreen;
import wherefrom.ui.changes.StandingScreen;
import wherefrom.ui.photos.PhotoTaking;

/** What the keys of a part's page do. */
final class PartDeeds {
  private final ScreenContext context;
  private final PartModel model;

  PartDeeds(ScreenContext context, PartModel model) {
    this.context = context;
    this.model = model;
  }

  /** Does it, or asks first what must be known for it. */
  void act(Deed deed) {
    switch (deed) {
      case INSPECT -> context.navigator().show(ScreenId.INSPECT, model.part().item());
      case MEASURE -> context.navigator().show(ScreenId.MEASURE, model.part().item());
      case NOTE -> words("Note: " + model.title(), model::note);
      case PHOTO -> PhotoTaking.ask(context, model.part());
      case DECIDE -> context.navigator().show(ScreenId.DECIDE, model.part().item());
      case REPRINT ->
          ReasonAsking.ask(context, "Why again?", Handling.REISSUE_REASONS, this::reissue);
      case PIECES -> number("How many pieces hang on its wire, under one tag?", model::pieces);
      case WASH -> number("Which basket? The number on its tag.", model::wash);
      case CHECK -> context.navigator().open(this::check);
      case BACK -> back(WayOut.BACK_FROM_WASHING, () -> done(model::back));
      case BACK_FROM_SHOP -> back(WayOut.BACK_FROM_SHOP, this::backFromShop);
      case OUT -> context.perform(model::out);
      case TOOK_OUT -> done(model::tookOut);
      case LOST -> words("Where it was last seen", model::lost);
      case FOUND -> done(model::found);
      case REPLACE -> replace();
    }
  }

  /** The check that it waits for; else all that concerns it, the open checks first. */
  private Screen check() {
    return model
        .waysOn()
        .check()
        .<Screen>map(rule -> new ConsequenceScreen(context, rule.consequence()))
        .orElseGet(() -> StandingScreen.of(context, model.part().item()));
  }

  /** A part that is back is not done by that. */
  private void back(WayOut from, Runnable deed) {
    BackAsking.ask(context, Optional.of(model.part()), from, deed);
  }

  private void words(String title, Function<String, HandlingOutcome> deed) {
    context
        .navigator()
        .open(
            () -> new TextEntryScreen(context, title, "", typed -> done(() -> deed.apply(typed))));
  }

  private void number(String question, Function<String, HandlingOutcome> deed) {
    context
        .navigator()
        .open(
            () ->
                NumberEntryScreen.digits(
                    context, model.title(), question, 3, typed -> done(() -> deed.apply(typed))));
  }

  private void reissue(String reason) {
    print(() -> model.reissue(reason));
  }

  private void backFromShop() {
    context.attempt(
        () -> {
          MachineShop shop = new MachineShop(context.getJob());
          if (shop.backByScan(model.part().item(), "")
              instanceof MachineShop.Answer.Refused refused) {
            context.fail(refused.sentence());
          }
        });
    context.navigator().changed();
  }

  private void replace() {
    ReplaceAsking.ask(
        context,
        model.part(),
        model.waysOn().whyNew(),
        (reason, fresh) -> print(() -> model.replace(reason, fresh)));
  }

  /** The tag that a deed calls for is printed at once. */
  private void print(Supplier<HandlingOutcome> deed) {
    context.attempt(
        () -> {
          HandlingOutcome came = deed.get();
          if (came instanceof HandlingOutcome.Logged logged) {
            context.navigator().show(ScreenId.PRINT_TAGS, logged.part().part().item());
          } else {
            context.say(((HandlingOutcome.Refused) came).sentence());
          }
        });
  }

  private void done(Supplier<HandlingOutcome> deed) {
    context.attempt(
        () -> {
          if (deed.get() instanceof HandlingOutcome.Refused refused) {
            context.fail(refused.sentence());
          }
        });
    context.navigator().changed();
  }
}
