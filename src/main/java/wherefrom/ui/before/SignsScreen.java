package wherefrom.ui.before;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.layout.Region;
import wherefrom.rules.before.LookAt;
import wherefrom.rules.before.Symptom;
import wherefrom.text.Words;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.WordsScreen;

/** What the tests point to, each with where to look when it is open. */
public final class SignsScreen extends ListPage {
  private static final int NAMED = 12;

  private final BeforeModel model;

  public SignsScreen(ScreenContext context) {
    super(context, "What it points to");
    model = new BeforeModel(context.getJob());
  }

  @Override
  public String aside() {
    return model.signs().size() + " found";
  }

  @Override
  protected String whenEmpty() {
    return "Nothing stands out so far. Read each cylinder dry, then type your manual's limits.";
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    for (Symptom sign : model.signs()) {
      rows.add(
          key(
              heading(sign),
              touch().brief(found(sign), ""),
              () -> open(() -> new WordsScreen(context, title(), lines(sign)))));
    }
    return rows;
  }

  /** What was read; the one cylinder that the heading names is not named again. */
  private static String found(Symptom sign) {
    String named = sign.cylinders().size() == 1 ? "Cylinder " + sign.cylinders().get(0) + ": " : "";
    boolean again = !named.isEmpty() && sign.found().startsWith(named);
    return again ? Words.capital(sign.found().substring(named.length())) : sign.found();
  }

  /** {@code Cylinder 3, 5: the head gasket}: which, then what. */
  private static String heading(Symptom sign) {
    String which = sign.cylinders().stream().map(String::valueOf).collect(Collectors.joining(", "));
    return which.isEmpty()
        ? sign.pointsTo()
        : "Cylinder " + which + ": " + Words.small(sign.pointsTo());
  }

  private static List<WordsScreen.Paragraph> lines(Symptom sign) {
    List<WordsScreen.Paragraph> lines = new ArrayList<>();
    lines.add(new WordsScreen.Paragraph("Found", sign.found()));
    lines.add(new WordsScreen.Paragraph("Points to", sign.pointsTo()));
    if (!sign.lookAt().isEmpty()) {
      lines.add(new WordsScreen.Paragraph("Look there when it is open", places(sign.lookAt())));
    }
    lines.add(new WordsScreen.Paragraph("Source", sign.source()));
    lines.add(
        new WordsScreen.Paragraph(
            "What counts", "A test only points. What you see there decides."));
    return lines;
  }

  private static String places(List<LookAt> all) {
    List<String> named = all.stream().limit(NAMED).map(LookAt::words).toList();
    String more = all.size() > NAMED ? "; and " + (all.size() - NAMED) + " more" : "";
    return String.join("; ", named) + more + ".";
  }
}
