package org.leverbook.figure;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOInvalidTreeException;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/**
 * Writes images as one animated GIF (version 89a) that starts anew at its end. Each frame after the
 * first holds only the rectangle that changed, and in it only the points that did.
 */
final class GifFile {

  private static final String IMAGE = "javax_imageio_gif_image_1.0";
  private static final String STREAM = "javax_imageio_gif_stream_1.0";

  private final GifPalette palette;
  private final IndexColorModel model;

  private GifFile(List<BufferedImage> frames) {
    this.palette = new GifPalette(frames);
    this.model = palette.model();
  }

  /**
   * Writes the file.
   *
   * @param frames images of one size
   * @param order which image is shown after which
   * @param hundredths how long each of the order stands, hundredths of a second
   * @param told what is to be seen, for readers that show comments; letters beyond ASCII become
   *     question marks, as the format asks
   * @return its bytes
   */
  static byte[] write(
      List<BufferedImage> frames, List<Integer> order, List<Integer> hundredths, String told) {
    try {
      return new GifFile(frames).file(frames, order, hundredths, told);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private byte[] file(
      List<BufferedImage> frames, List<Integer> order, List<Integer> hundredths, String told)
      throws IOException {
    List<int[]> points = frames.stream().map(this::points).toList();
    int width = frames.get(0).getWidth();
    int height = frames.get(0).getHeight();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("gif").next();
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(file)) {
      writer.setOutput(out);
      writer.prepareWriteSequence(stream(writer, width, height));
      int[] before = null;
      for (int i = 0; i < order.size(); i++) {
        int[] now = points.get(order.get(i));
        Rectangle changed = changed(before, now, width, height);
        BufferedImage image = image(before, now, changed, width);
        IIOMetadata about = about(writer, changed, hundredths.get(i), i == 0 ? told : "");
        writer.writeToSequence(new IIOImage(image, null, about), null);
        before = now;
      }
      writer.endWriteSequence();
    } finally {
      writer.dispose();
    }
    return file.toByteArray();
  }

  private int[] points(BufferedImage frame) {
    int[] points =
        frame.getRGB(0, 0, frame.getWidth(), frame.getHeight(), null, 0, frame.getWidth());
    int last = points[0];
    int index = palette.index(last);
    for (int i = 0; i < points.length; i++) {
      if (points[i] != last) {
        last = points[i];
        index = palette.index(last);
      }
      points[i] = index;
    }
    return points;
  }

  /** The least rectangle that holds all changes; one point where nothing changed. */
  private static Rectangle changed(int[] before, int[] now, int width, int height) {
    if (before == null) {
      return new Rectangle(width, height);
    }
    int left = width;
    int right = -1;
    int top = height;
    int bottom = -1;
    for (int i = 0; i < now.length; i++) {
      if (now[i] != before[i]) {
        left = Math.min(left, i % width);
        right = Math.max(right, i % width);
        top = Math.min(top, i / width);
        bottom = i / width;
      }
    }
    return right < 0
        ? new Rectangle(1, 1)
        : new Rectangle(left, top, right - left + 1, bottom - top + 1);
  }

  private BufferedImage image(int[] before, int[] now, Rectangle part, int width) {
    BufferedImage image =
        new BufferedImage(part.width, part.height, BufferedImage.TYPE_BYTE_INDEXED, model);
    for (int y = 0; y < part.height; y++) {
      for (int x = 0; x < part.width; x++) {
        int at = (part.y + y) * width + part.x + x;
        boolean same = before != null && before[at] == now[at];
        image.getRaster().setSample(x, y, 0, same ? GifPalette.CLEAR : now[at]);
      }
    }
    return image;
  }

  private IIOMetadata stream(ImageWriter writer, int width, int height)
      throws IIOInvalidTreeException {
    IIOMetadata stream = writer.getDefaultStreamMetadata(null);
    IIOMetadataNode root = (IIOMetadataNode) stream.getAsTree(STREAM);
    IIOMetadataNode version = node(root, "Version");
    version.setAttribute("value", "89a");
    IIOMetadataNode screen = node(root, "LogicalScreenDescriptor");
    screen.setAttribute("logicalScreenWidth", Integer.toString(width));
    screen.setAttribute("logicalScreenHeight", Integer.toString(height));
    screen.setAttribute("colorResolution", "8");
    screen.setAttribute("pixelAspectRatio", "0");
    IIOMetadataNode colours = node(root, "GlobalColorTable");
    colours.setAttribute("sizeOfGlobalColorTable", "256");
    colours.setAttribute("backgroundColorIndex", "0");
    colours.setAttribute("sortFlag", "FALSE");
    for (int i = 0; i < 256; i++) {
      IIOMetadataNode entry = new IIOMetadataNode("ColorTableEntry");
      entry.setAttribute("index", Integer.toString(i));
      entry.setAttribute("red", Integer.toString(model.getRed(i)));
      entry.setAttribute("green", Integer.toString(model.getGreen(i)));
      entry.setAttribute("blue", Integer.toString(model.getBlue(i)));
      colours.appendChild(entry);
    }
    stream.setFromTree(STREAM, root);
    return stream;
  }

  private IIOMetadata about(ImageWriter writer, Rectangle part, int hundredths, String told)
      throws IIOInvalidTreeException {
    ImageTypeSpecifier type = new ImageTypeSpecifier(image(null, new int[1], ONE, 1));
    IIOMetadata about = writer.getDefaultImageMetadata(type, null);
    IIOMetadataNode root = (IIOMetadataNode) about.getAsTree(IMAGE);
    IIOMetadataNode place = node(root, "ImageDescriptor");
    place.setAttribute("imageLeftPosition", Integer.toString(part.x));
    place.setAttribute("imageTopPosition", Integer.toString(part.y));
    place.setAttribute("imageWidth", Integer.toString(part.width));
    place.setAttribute("imageHeight", Integer.toString(part.height));
    place.setAttribute("interlaceFlag", "FALSE");
    IIOMetadataNode control = node(root, "GraphicControlExtension");
    control.setAttribute("disposalMethod", "doNotDispose");
    control.setAttribute("userInputFlag", "FALSE");
    control.setAttribute("transparentColorFlag", "TRUE");
    control.setAttribute("transparentColorIndex", Integer.toString(GifPalette.CLEAR));
    control.setAttribute("delayTime", Integer.toString(hundredths));
    if (!told.isEmpty()) {
      IIOMetadataNode loop = new IIOMetadataNode("ApplicationExtension");
      loop.setAttribute("applicationID", "NETSCAPE");
      loop.setAttribute("authenticationCode", "2.0");
      // One, then how often it starts anew: zero is for ever.
      loop.setUserObject(new byte[] {1, 0, 0});
      node(root, "ApplicationExtensions").appendChild(loop);
      IIOMetadataNode comment = new IIOMetadataNode("CommentExtension");
      byte[] ascii = told.getBytes(StandardCharsets.US_ASCII);
      comment.setAttribute("value", new String(ascii, StandardCharsets.US_ASCII));
      node(root, "CommentExtensions").appendChild(comment);
    }
    about.setFromTree(IMAGE, root);
    return about;
  }

  private static final Rectangle ONE = new Rectangle(1, 1);

  private static IIOMetadataNode node(IIOMetadataNode root, String name) {
    for (int i = 0; i < root.getLength(); i++) {
      if (root.item(i).getNodeName().equals(name)) {
        return (IIOMetadataNode) root.item(i);
      }
    }
    IIOMetadataNode node = new IIOMetadataNode(name);
    root.appendChild(node);
    return node;
  }
}
