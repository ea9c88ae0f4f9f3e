package wherefrom.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitWidthDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import wherefrom.drawing.Glass;
import wherefrom.files.Outgoing;
import wherefrom.job.pages.PaperSize;

/** A document of pages that are written on in any order until it is saved. */
public final class Book implements AutoCloseable {
  /** What a drawing must be made for: its unit is the point. */
  public static final Glass GLASS = PdfDrawing.GLASS;

  static final double POINTS = 72 / 25.4;

  private final PDDocument document = new PDDocument();
  private final PageLetters regular;
  private final PageLetters bold;
  private final List<PaperPage> pages = new ArrayList<>();

  public Book(String title) throws IOException {
    regular = PageLetters.regular(document);
    bold = PageLetters.bold(document);
    document.getDocumentInformation().setTitle(title);
  }

  /** A new page behind the others. */
  public PaperPage page(PaperSize size, boolean landscape) throws IOException {
    double wide = landscape ? size.height() : size.width();
    double high = landscape ? size.width() : size.height();
    PDPage page = new PDPage(new PDRectangle((float) (wide * POINTS), (float) (high * POINTS)));
    document.addPage(page);
    PaperPage paper = new PaperPage(document, page, regular, bold);
    pages.add(paper);
    return paper;
  }

  /** The pages so far, in their order. */
  public List<PaperPage> pages() {
    return List.copyOf(pages);
  }

  /**
   * Names pages for the reader's list of contents.
   *
   * @param entries each page's name with its number, 1 the first
   */
  public void outline(List<Entry> entries) {
    PDDocumentOutline outline = new PDDocumentOutline();
    for (Entry entry : entries) {
      PDOutlineItem item = new PDOutlineItem();
      PDPageFitWidthDestination target = new PDPageFitWidthDestination();
      target.setPage(document.getPage(entry.page() - 1));
      item.setDestination(target);
      item.setTitle(entry.title());
      outline.addLast(item);
    }
    document.getDocumentCatalog().setDocumentOutline(outline);
  }

  /** A line of the contents; the first page is 1. */
  public record Entry(String title, int page) {}

  public void save(Outgoing pdf) throws IOException {
    for (PaperPage page : pages) {
      page.close();
    }
    pdf.write(document::save);
  }

  @Override
  public void close() throws IOException {
    for (PaperPage page : pages) {
      page.close();
    }
    document.close();
  }
}
