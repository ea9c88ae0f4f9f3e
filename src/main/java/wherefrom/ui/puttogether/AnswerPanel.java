package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import wherefrom.text.Words;
import wherefrom.ui.controls.CueMark;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.ScreenAnswer;
import wherefrom.ui.controls.Touch;

/** An answer that is no verdict on a place: its figure where it asks, its lines, what to do. */
final class AnswerPanel extends Region {
  private static final double MARK_MM = 26;
  private static final double LEAST_MARK_MM = 14;
  private static final double PAD_MM = 3.4;

  private final double pad;
  private final double usual;
  private final double leastMark;
  private final Optional<Node> mark;
  private final FitText head;
  private final FitText lines;
  private final String whole;
  private final double wholeWide;
  private final FitText small;

  AnswerPanel(Touch touch, ScreenAnswer answer) {
    pad = touch.scale().px(PAD_MM);
    usual = touch.scale().px(MARK_MM);
    leastMark = touch.scale().px(LEAST_MARK_MM);
    mark = answer.cue().map(cue -> CueMark.of(cue, usual));
    head = touch.heading(Words.capital(answer.headline())).align(Pos.CENTER_LEFT);
    lines = touch.lines(answer.lines()).align(Pos.CENTER_LEFT);
    whole = lines.words();
    wholeWide = lines.minWidth(-1);
    small = touch.small(answer.small()).align(Pos.CENTER_LEFT);
    getStyleClass().add(mark.isPresent() ? "card-ask" : "row");
    List<Node> all = new ArrayList<>(List.of(head, lines, small));
    mark.ifPresent(all::add);
    getChildren().setAll(all);
    setMouseTransparent(true);
  }

  private double markSide(double width) {
    return mark.isEmpty() ? 0 : Math.max(leastMark, Math.min(usual, 0.16 * width));
  }

  private double wordsWide(double width) {
    double side = markSide(width);
    return Math.max(1, width - 2 * pad - (side > 0 ? side + pad : 0));
  }

  /** Its short lines stay whole where they have room; else they are broken, and never cut. */
  private void breakLines(double wide) {
    lines.setWords(wholeWide > wide ? whole.replace('\u00a0', ' ') : whole);
  }

  private static double high(FitText text, double width) {
    return text.words().isEmpty() ? 0 : text.minHeight(width);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return leastMark + 4 * pad;
  }

  @Override
  protected double computeMinHeight(double width) {
    double wide = wordsWide(width);
    breakLines(wide);
    double large = high(head, wide) + high(lines, wide);
    double words = large > 0 ? large : high(small, wide);
    return Math.ceil(Math.max(words, markSide(width)) + 1.6 * pad);
  }

  @Override
  protected double computePrefHeight(double width) {
    double wide = wordsWide(width);
    breakLines(wide);
    double grown = lines.words().isEmpty() ? 0 : 0.6 * lines.prefHeight(wide);
    double words = head.prefHeight(wide) + Math.max(high(lines, wide), grown) + high(small, wide);
    return Math.ceil(Math.max(computeMinHeight(width), words + 1.6 * pad));
  }

  @Override
  protected void layoutChildren() {
    double side = markSide(getWidth());
    mark.ifPresent(figure -> put(figure, side));
    double left = pad + (side > 0 ? side + pad : 0);
    double wide = wordsWide(getWidth());
    breakLines(wide);
    double room = getHeight() - 1.6 * pad;
    double above = high(head, wide);
    double told = high(small, wide);
    boolean roomy = above + high(lines, wide) + told <= room + 1;
    small.setVisible(roomy);
    double below = roomy ? told : 0;
    double middle = Math.max(0, room - below - above);
    boolean large = !lines.words().isEmpty();
    double top = 0.8 * pad + (large ? 0 : middle / 2);
    Panes.place(head, left, top, wide, above);
    Panes.place(lines, left, top + above, wide, large ? middle : 0);
    Panes.place(small, left, top + above + (large ? middle : 0), wide, below);
  }

  private void put(Node figure, double side) {
    figure.setScaleX(side / usual);
    figure.setScaleY(side / usual);
    double aside = (usual - side) / 2;
    figure.relocate(pad - aside, (getHeight() - side) / 2 - aside);
  }
}
