package wherefrom.print;

import static org.assertj.core.api.Assertions.assertThat;

import boofcv.alg.fiducial.qrcode.QrCode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wherefrom.job.print.PrintOrder;
import wherefrom.job.print.PrintSetup;
import wherefrom.job.print.TagFace;
import wherefrom.parts.LabelFrame;

/**
 * Every part tag of a V8 on every ready stock: printed, rasterised at 203 and 300 dpi, read back by
 * two decoders from two code bases, and measured.
 */
class SheetRoundTripTest {
  private static final double TOLERANCE_MM = 0.1;
  private static final StockShelf SHELF = StockShelf.ofReady();
  private static final List<TagFace> TAGS = SampleTags.parts();
  private static final Decoders DECODERS = new Decoders();

  static Stream<LabelStock> stocks() {
    return SHELF.listStocks().stream();
  }

  @ParameterizedTest
  @MethodSource("stocks")
  void everyTagOfTheStockReadsBackAndHasItsSize(LabelStock stock) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(print(stock))) {
      for (int dpi : List.of(203, 300)) {
        List<String> wrong = new ArrayList<>();
        for (int tag = 0; tag < TAGS.size(); tag++) {
          wrong.addAll(faults(new Label(pdf, stock, tag, dpi)));
        }
        assertThat(wrong).as("%s at %d dpi", stock.name(), dpi).isEmpty();
      }
    }
  }

  private static byte[] print(LabelStock stock) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PdfPages pages = new PdfPages(stock.name())) {
      LabelPlan plan = LabelPlan.find(stock, stock.dpi()).orElseThrow();
      PrintOrder order = PrintOrder.of("Part tags", TAGS, PrintSetup.on(stock.name()));
      new TagSheets(stock, plan, order).draw(pages);
      pages.write(out);
    }
    return out.toByteArray();
  }

  /** One printed label. */
  private record Label(PDDocument pdf, LabelStock stock, int tag, int dpi) {
    private static final double ROUND_MM = 5;

    /** The symbol with what is printed within 5 mm round it on its label. */
    Raster raster() throws IOException {
      int perPage = stock.labelsPerPage();
      Box label = stock.labelBox(tag % perPage);
      Box area = area().movedBy(label.x(), label.y());
      return perPage == 1
          ? Raster.ofArea(pdf, tag, dpi, area)
          : PageRasters.of(pdf, tag / perPage, dpi).part(area);
    }

    /** Where the raster lies on the label. */
    Box area() {
      Box symbol = plan().symbol();
      double left = Math.max(0, symbol.x() - ROUND_MM);
      double top = Math.max(0, symbol.y() - ROUND_MM);
      double right = Math.min(plan().label().right(), symbol.right() + ROUND_MM);
      double bottom = Math.min(plan().label().bottom(), symbol.bottom() + ROUND_MM);
      return new Box(left, top, right - left, bottom - top);
    }

    /** The symbol's place in the raster. */
    Box symbol() {
      return plan().symbol().movedBy(-area().x(), -area().y());
    }

    LabelPlan plan() {
      return LabelPlan.find(stock, stock.dpi()).orElseThrow();
    }

    String digits() {
      return TAGS.get(tag).code().digits();
    }
  }

  /** Renders a page once for all its labels. */
  private static final class PageRasters {
    private static String lastKey = "";
    private static Raster last = new Raster(new java.awt.image.BufferedImage(1, 1, 10), 1);

    static Raster of(PDDocument pdf, int page, int dpi) throws IOException {
      String key = System.identityHashCode(pdf) + "/" + page + "/" + dpi;
      if (!key.equals(lastKey)) {
        last = Raster.ofPage(pdf, page, dpi);
        lastKey = key;
      }
      return last;
    }
  }

  private static List<String> faults(Label label) throws IOException {
    Raster raster = label.raster();
    List<String> faults = new ArrayList<>();
    String zxing = DECODERS.zxing(raster);
    if (!zxing.equals(label.digits())) {
      faults.add(label.tag() + ": ZXing reads \"" + zxing + "\"");
    }
    List<QrCode> found = DECODERS.boofcv(raster);
    if (found.size() != 1 || !isTag(found.get(0), label.digits())) {
      faults.add(label.tag() + ": BoofCV reads " + found);
    }
    faults.addAll(sizeFaults(label, raster));
    return faults;
  }

  private static boolean isTag(QrCode code, String digits) {
    return code.message.equals(digits)
        && code.version == 1
        && code.error == QrCode.ErrorLevel.H
        && code.mode == QrCode.Mode.NUMERIC;
  }

  private static List<String> sizeFaults(Label label, Raster raster) {
    double dots = label.dpi() / 25.4;
    double wanted = (LabelFrame.WIDTH - 2 * LabelFrame.MARGIN) * label.plan().moduleMm();
    Box symbol = label.symbol();
    double row = (symbol.y() + symbol.height() / 2) * dots;
    double column = (symbol.x() + symbol.width() / 2) * dots;
    SymbolSize size = new SymbolSize(raster);
    double across = size.across(row, symbol.x() * dots, symbol.right() * dots) / dots;
    double down = size.down(column, symbol.y() * dots, symbol.bottom() * dots) / dots;
    boolean right =
        Math.abs(across - wanted) <= TOLERANCE_MM && Math.abs(down - wanted) <= TOLERANCE_MM;
    return right
        ? List.of()
        : List.of(label.tag() + ": " + across + " x " + down + " mm instead of " + wanted);
  }
}
