package wherefrom.ui.settings;

import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;

/** One license, in pages. */
public final class LicenseScreen extends ListPage {
  private final LicenseText text;

  LicenseScreen(ScreenContext context, LicenseText text) {
    super(context, text.title(), false);
    this.text = text;
  }

  @Override
  protected List<Region> rows() {
    return text.paragraphs().stream().map(paragraph -> told("", paragraph)).toList();
  }
}
