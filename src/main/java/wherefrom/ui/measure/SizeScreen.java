package wherefrom.ui.measure;

import java.util.function.Consumer;
import javafx.scene.layout.Region;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.UnitSystem;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.Typable;
import wherefrom.ui.controls.Panes;

/** Asks for one size, in inch or millimetre as the person has it. */
public final class SizeScreen implements Screen, Typable {
  private final Desk desk;
  private final String title;
  private final Consumer<String> done;
  private final SizePad pad;
  private final Region view;

  /**
   * @param done is given the figure with its unit
   */
  public SizeScreen(
      Desk desk, String title, String question, Dimension dimension, Consumer<String> done) {
    this(desk, title, question, dimension, desk.state().units(), done);
  }

  /**
   * @param units the unit that stands on the pad at first, whatever the job is in
   */
  SizeScreen(
      Desk desk,
      String title,
      String question,
      Dimension dimension,
      UnitSystem units,
      Consumer<String> done) {
    this.desk = desk;
    this.title = title;
    this.done = done;
    pad = new SizePad(desk.touch(), units, dimension, false);
    Region side =
        Panes.grow(
            Panes.column(
                desk.scale(),
                Panes.grow(desk.touch().text(question)),
                desk.touch().primary("Done", this::enter)));
    pad.setPrefWidth(desk.scale().px(150));
    view = Panes.row(desk.scale(), pad, side);
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public boolean onJob() {
    return false;
  }

  @Override
  public void type(String character) {
    pad.type(character);
  }

  @Override
  public void erase() {
    pad.erase();
  }

  @Override
  public void enter() {
    if (pad.isEmpty()) {
      desk.say("Type the figure first.");
      return;
    }
    desk.navigator().back();
    done.accept(pad.typed());
  }
}
