package wherefrom.ui.decide;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.bags.AlwaysNew;
import wherefrom.job.money.GasketSet;
import wherefrom.rules.consequence.Goods;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;

/** What the gasket set holds: pressed, a gasket is in it, pressed again, it is not. */
public final class GasketSetScreen extends ListPage {
  public GasketSetScreen(ScreenContext context) {
    super(context, "What the set holds");
    layOut(List.of(), List.of());
  }

  private GasketSet set() {
    return GasketSet.of(context.state());
  }

  @Override
  public String aside() {
    GasketSet set = set();
    long held =
        set.candidates().stream().filter(one -> set.holds(one.article()) >= one.pieces()).count();
    return held + " of " + set.candidates().size() + " in it";
  }

  @Override
  protected String whenEmpty() {
    return "No single gasket is asked for yet. What comes off adds its gaskets here.";
  }

  @Override
  protected List<Region> rows() {
    GasketSet set = set();
    List<Region> rows = new ArrayList<>();
    for (AlwaysNew one : set.candidates()) {
      boolean held = set.holds(one.article()) >= one.pieces();
      rows.add(
          key(
              one.pieces() + " × " + one.what(),
              held
                  ? held(one)
                  : touch().brief("not in the set: bought by itself", "not in the set"),
              () -> tick(one, held)));
    }
    return rows;
  }

  /** Its thickness decides on the ratio and on the room to the valves. */
  private static String held(AlwaysNew one) {
    boolean head = one.article().findGoods().filter(Goods.HEAD_GASKETS::equals).isPresent();
    return head ? "in the set. Check its compressed thickness first." : "in the set";
  }

  private void tick(AlwaysNew one, boolean held) {
    context.attempt(
        () ->
            context.say(GasketSet.tick(context.getJob(), one.article(), held ? 0 : one.pieces())));
    context.navigator().changed();
  }
}
