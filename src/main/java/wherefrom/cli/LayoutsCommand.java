package wherefrom.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.ports.Equipment;
import wherefrom.parts.PartKind;
import wherefrom.parts.Places;

/** Lists layouts, and writes one to a file for editing. */
final class LayoutsCommand implements Command {
  private final Equipment equipment;

  LayoutsCommand(Equipment equipment) {
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    return Usage.of(
            "layouts",
            "[NAME]",
            "Lists the engine layouts, or writes one to a file for editing.",
            Option.maybe("--folder", "SHOP", "lists the layouts that are kept in this shop too"),
            Option.maybe(
                "--out", "F.json", "where to write the layout with this NAME; - for output"),
            Outlet.REPLACE)
        .noting("A line a layout: name, title, parts tracked always, parts with every kind on.");
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput, IOException {
    List<Layout> layouts = new ArrayList<>(ReadyLayouts.all());
    if (call.find("--folder").isPresent()) {
      layouts.addAll(equipment.shelves().apply(call.path("--folder")).listLayouts());
    }
    if (call.operands().isEmpty()) {
      layouts.forEach(layout -> list(layout, answer));
      return Status.RIGHT;
    }
    Layout layout = find(layouts, call.operands().get(0), call);
    Optional<Outlet> outlet = Outlet.find(call, "--out", answer);
    if (outlet.isEmpty()) {
      list(layout, answer);
      return Status.RIGHT;
    }
    equipment.layouts().write(layout, outlet.get().out());
    answer.only(
        Fields.of("name", layout.name()).and("file", outlet.get().name()),
        "Written: " + outlet.get().name() + ". Give it a name of its own before you change it.");
    return Status.RIGHT;
  }

  private static Layout find(List<Layout> layouts, String name, Call call) throws BadInput {
    return layouts.stream()
        .filter(layout -> layout.name().equals(name))
        .findFirst()
        .orElseThrow(() -> call.wrong("There is no layout \"" + name + "\"."));
  }

  private static void list(Layout layout, Answer answer) {
    int always = Places.of(layout, PartKind.alwaysOn()).size();
    int every = Places.of(layout, PartKind.all()).size();
    answer.row(
        Fields.of("name", layout.name())
            .and("title", layout.title())
            .and("parts", always)
            .and("partsWithEveryKind", every),
        Answer.cells(layout.name(), layout.title(), String.valueOf(always), String.valueOf(every)));
  }
}
