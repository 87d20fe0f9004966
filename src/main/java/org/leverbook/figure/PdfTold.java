package org.leverbook.figure;

import java.io.IOException;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** What a PDF tells readers who listen: its title, and the whole page as one described figure. */
final class PdfTold {

  private static final COSName FIGURE = COSName.getPDFName("Figure");

  private static final int PIECE = 0;

  private PdfTold() {}

  /** Title, language and description; no date, so that the same picture is the same file. */
  static void tell(PDDocument document, PDPage page, Drawing drawing) {
    PDDocumentInformation about = new PDDocumentInformation();
    about.setTitle(drawing.title());
    about.setSubject(drawing.description());
    about.setCreator("Leverbook");
    document.setDocumentInformation(about);

    PDDocumentCatalog catalog = document.getDocumentCatalog();
    catalog.setLanguage("en");
    PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
    preferences.setDisplayDocTitle(true);
    catalog.setViewerPreferences(preferences);
    PDMarkInfo marked = new PDMarkInfo();
    marked.setMarked(true);
    catalog.setMarkInfo(marked);
    catalog.setStructureTreeRoot(tree(page, drawing));
  }

  private static PDStructureTreeRoot tree(PDPage page, Drawing drawing) {
    PDStructureTreeRoot root = new PDStructureTreeRoot();
    PDStructureElement whole = new PDStructureElement("Document", root);
    root.appendKid(whole);
    PDStructureElement figure = new PDStructureElement(FIGURE.getName(), whole);
    figure.setPage(page);
    figure.setTitle(drawing.title());
    figure.setAlternateDescription(drawing.title() + ". " + drawing.description());
    figure.appendKid(PIECE);
    whole.appendKid(figure);
    page.setStructParents(0);
    // Page 0, piece 0: the figure.
    COSArray pieces = new COSArray();
    pieces.add(figure.getCOSObject());
    COSArray pages = new COSArray();
    pages.add(COSInteger.get(0));
    pages.add(pieces);
    COSDictionary parents = new COSDictionary();
    parents.setItem(COSName.NUMS, pages);
    root.getCOSObject().setItem(COSName.PARENT_TREE, parents);
    root.setParentTreeNextKey(1);
    return root;
  }

  static void begin(PDPageContentStream page) throws IOException {
    page.beginMarkedContent(FIGURE, PIECE);
  }

  static void end(PDPageContentStream page) throws IOException {
    page.endMarkedContent();
  }
}
