package org.leverbook.figure;

import java.util.List;
import java.util.Optional;
import org.leverbook.body.JointId;
import org.leverbook.display.Illustrator;
import org.leverbook.display.Picture;
import org.leverbook.marks.Fit;
import org.leverbook.statics.Position;
import org.leverbook.study.Grid;
import org.leverbook.study.Optimum;
import org.leverbook.study.Sweep;
import org.leverbook.study.TradeOff;

/** Draws positions, sweeps, grids and searches. */
public final class FigureIllustrator implements Illustrator {

  @Override
  public Optional<Picture> draw(Object subject, List<?> wishes) {
    List<JointId> joints =
        wishes.stream()
            .filter(JointId.class::isInstance)
            .map(JointId.class::cast)
            .distinct()
            .toList();
    if (subject instanceof Position position) {
      Scene view = Scene.of(position, joints.isEmpty() ? Scene.usual(position) : joints);
      return Optional.of(PositionPicture.of(view, FigureStyle.PRINT));
    }
    if (subject instanceof Fit fit) {
      return Optional.of(PhotoPage.picture(fit, joints, FigureStyle.PRINT));
    }
    if (subject instanceof Sweep sweep) {
      return Optional.of(
          Plots.picture(sweep, joints.isEmpty() ? Plots.usual() : joints, FigureStyle.PRINT));
    }
    if (subject instanceof Grid<?, ?> grid) {
      return Optional.of(
          HeatMaps.picture(
              grid, joints.isEmpty() ? JointId.HIP : joints.get(0), FigureStyle.PRINT));
    }
    if (subject instanceof Optimum<?> optimum) {
      return Optional.of(SearchPlots.picture(optimum, FigureStyle.PRINT));
    }
    if (subject instanceof TradeOff<?> trade) {
      return Optional.of(SearchPlots.picture(trade, FigureStyle.PRINT));
    }
    return Optional.empty();
  }
}
