package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.puttogether.FitMode;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;

/** All keys of putting together on a page: the largest letters leave no room for them. */
final class MoreWays {
  private MoreWays() {}

  static void open(ScreenContext context, WorkKeys.Deeds deeds) {
    List<Choice<Runnable>> all =
        new ArrayList<>(
            List.of(
                new Choice<>(() -> deeds.choose(FitMode.FOLLOW_THE_LIST), "Follow list", ""),
                new Choice<>(() -> deeds.choose(FitMode.SCAN_BOTH), "Scan both", ""),
                new Choice<>(() -> deeds.choose(FitMode.WHERE_DOES_THIS_GO), "Where to?", ""),
                new Choice<>(deeds::typeCode, "Type code", ""),
                new Choice<>(deeds::noTag, "No tag on it", ""),
                new Choice<>(deeds::missing, "Missing", ""),
                new Choice<>(
                    () -> context.navigator().show(ScreenId.BAGS), "Bags and big parts", "")));
    if (deeds.hasPhoto()) {
      all.add(new Choice<>(deeds::photo, "Photo before", ""));
    }
    context.navigator().open(() -> new ChoiceScreen<>(context, "Put together", all, Runnable::run));
  }
}
