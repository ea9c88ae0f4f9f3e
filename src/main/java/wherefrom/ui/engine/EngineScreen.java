package wherefrom.ui.engine;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.engine.Layout;
import wherefrom.files.Outgoing;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.files.FilesScreen;
import wherefrom.ui.files.Saving;

/** Edits every field of a layout by touch; what is wrong stands in the row it is wrong in. */
public final class EngineScreen extends Page {
  private static final List<String> JSON = List.of(".json");

  private final LayoutDraft draft;
  private final LayoutEditor editor;
  private final Consumer<Layout> done;
  private final Pager<LayoutFields.Row> list;
  private final TagKey tag;

  /**
   * Makes the screen.
   *
   * @param done is given the layout when it is to be used; Back leaves the draft for another time
   */
  public EngineScreen(ScreenContext context, Layout start, Consumer<Layout> done) {
    super(context, "Engine layout", false);
    this.draft = context.kept().keep(DraftLeft.class, DraftLeft::new).of(start);
    this.editor = new LayoutEditor(context, draft);
    this.done = done;
    Touch touch = context.touch();
    list = Pager.list(touch, this::row);
    tag = touch.tag("Use it", "", this::use);
    VBox view =
        Panes.column(
            context.scale(),
            list,
            new Foot(
                context,
                tag,
                KeyRow.of(
                    context,
                    new KeyRow.Act("See it drawn", this::draw),
                    new KeyRow.Act(touch.brief("Keep on the shelf", "Keep it"), this::keep),
                    new KeyRow.Act("Save to a file", this::save),
                    new KeyRow.Act("Load a file", this::load))));
    list.setItems(LayoutFields.of(draft));
    lay(view);
    refresh();
  }

  /**
   * What is wrong has room in its row, but for large letters: it is said where it is put right. So
   * is what stands there now, where a page would hold a row or two with it.
   */
  private Region row(LayoutFields.Row row) {
    List<String> lines = new ArrayList<>(List.of(row.value()));
    if (context.touch().isLarge() && !row.faults().isEmpty()) {
      lines.add("Not right yet.");
    } else {
      row.faults().forEach(fault -> lines.add(notYet(fault)));
    }
    ListRow key = ListRow.key(context.touch(), row.heading(), lines, () -> edit(row));
    return context.touch().isLarge() && row.faults().isEmpty() ? key.sparing() : key;
  }

  /** Without the field's name in the file: the row's heading names it. */
  private static String notYet(String fault) {
    return "Not yet: " + fault.substring(fault.indexOf(':') + 1).strip();
  }

  private void edit(LayoutFields.Row row) {
    editor.edit(row);
    changed();
    if (context.touch().isLarge()) {
      row.faults().stream().findFirst().map(EngineScreen::notYet).ifPresent(context::say);
    }
  }

  /** The first row that is wrong. */
  private Optional<LayoutFields.Row> firstWrong() {
    return LayoutFields.of(draft).stream().filter(row -> !row.faults().isEmpty()).findFirst();
  }

  /** A layout that is wrong as typed has no drawing. */
  private void draw() {
    if (sound()) {
      Layout layout = draft.layout();
      context.navigator().open(() -> new DrawnScreen(context, layout));
    }
  }

  private boolean sound() {
    return draft.faults().stream()
        .findFirst()
        .map(
            fault -> {
              context.say("Not yet: " + fault.sentence());
              return false;
            })
        .orElse(true);
  }

  private void use() {
    Optional<LayoutFields.Row> wrong = firstWrong();
    if (wrong.isPresent()) {
      edit(wrong.get());
    } else if (sound()) {
      context.navigator().back();
      context.kept().drop(DraftLeft.class);
      done.accept(draft.layout());
    }
  }

  private void keep() {
    if (sound()) {
      new LayoutKeeping(context, draft.layout()).keep();
    }
  }

  private void save() {
    if (sound()) {
      Layout layout = draft.layout();
      new Saving<>(
              context,
              "Where to save the layout",
              layout.name() + ".json",
              out -> write(layout, out),
              (file, written) -> context.say("The layout is saved as " + file + "."))
          .ask();
    }
  }

  private Layout write(Layout layout, Outgoing out) throws IOException {
    context.services().layouts().write(layout, out);
    return layout;
  }

  private void load() {
    context
        .navigator()
        .open(() -> FilesScreen.file(context, "Load a layout", JSON, this::loadFrom));
  }

  private void loadFrom(Path file) {
    context.attempt(() -> draft.replace(context.services().layouts().read(file)));
    changed();
  }

  @Override
  protected void refresh() {
    list.refill(LayoutFields.of(draft));
    tag.setWords(firstWrong().map(row -> "Put right: " + row.heading()).orElse("Use it"), "");
  }
}
