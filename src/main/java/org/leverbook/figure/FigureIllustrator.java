package org.leverbook.figure;

import java.util.List;
import java.util.Optional;
import org.leverbook.body.JointId;
import org.leverbook.display.Illustrator;
import org.leverbook.display.MovingPicture;
import org.leverbook.display.Picture;
import org.leverbook.lift.Library;
import org.leverbook.marks.Fit;
import org.leverbook.statics.Position;
import org.leverbook.statics.PositionDrawing;
import org.leverbook.study.ClaimAnswer;
import org.leverbook.study.Comparison;
import org.leverbook.study.Grid;
import org.leverbook.study.GridOfThree;
import org.leverbook.study.Optimum;
import org.leverbook.study.Sensitivity;
import org.leverbook.study.Sweep;
import org.leverbook.study.TradeOff;
import org.leverbook.study.WayComparison;

/**
 * Draws positions, sheets of lifts, sweeps, grids, comparisons, searches, and answers to claims and
 * doubts.
 */
public final class FigureIllustrator implements Illustrator {

  @Override
  public Optional<Picture> draw(Object subject, List<?> wishes) {
    return draw(subject, wishes, FigureStyle.current())
        .map(
            picture ->
                picture instanceof Again drawn
                    ? drawn.drawnBy(
                        new Again.Way(subject, style -> draw(subject, wishes, style).orElseThrow()))
                    : picture);
  }

  private static Optional<Picture> draw(Object subject, List<?> wishes, FigureStyle style) {
    List<JointId> joints =
        wishes.stream()
            .filter(JointId.class::isInstance)
            .map(JointId.class::cast)
            .distinct()
            .toList();
    if (subject instanceof Position position) {
      Scene view = Scene.of(position, joints.isEmpty() ? Scene.usual(position) : joints);
      return Optional.of(PositionPicture.of(view, style));
    }
    if (subject instanceof Library library) {
      return Optional.of(LiftSheet.picture(library, FigureStyle.current()));
    }
    if (subject instanceof PositionDrawing drawing) {
      return Optional.of(drawn(drawing, joints));
    }
    if (subject instanceof Fit fit) {
      return Optional.of(PhotoPage.picture(fit, joints, style));
    }
    if (subject instanceof Sweep sweep) {
      return Optional.of(Plots.picture(sweep, joints.isEmpty() ? Plots.usual() : joints, style));
    }
    if (subject instanceof Comparison comparison) {
      return Optional.of(SideBySidePage.picture(comparison, joints, style));
    }
    if (subject instanceof WayComparison ways) {
      return Optional.of(
          WayPlots.picture(ways, joints.isEmpty() ? JointId.HIP : joints.get(0), style));
    }
    if (subject instanceof Grid<?, ?> grid) {
      return Optional.of(
          HeatMaps.picture(grid, joints.isEmpty() ? JointId.HIP : joints.get(0), style));
    }
    if (subject instanceof GridOfThree<?, ?, ?> grid) {
      JointId joint = joints.isEmpty() ? JointId.HIP : joints.get(0);
      return Optional.of(MapRows.picture(grid, joint, style));
    }
    if (subject instanceof Sensitivity sensitivity) {
      return Optional.of(Tornado.picture(sensitivity, style));
    }
    if (subject instanceof ClaimAnswer answer) {
      return Optional.of(ClaimPicture.of(answer, wishes, style));
    }
    if (subject instanceof Optimum<?> optimum) {
      return Optional.of(SearchPlots.picture(optimum, style));
    }
    if (subject instanceof TradeOff<?> trade) {
      return Optional.of(SearchPlots.picture(trade, style));
    }
    return Optional.empty();
  }

  @Override
  public Optional<MovingPicture> move(Object subject, List<?> wishes) {
    List<JointId> joints =
        wishes.stream()
            .filter(JointId.class::isInstance)
            .map(JointId.class::cast)
            .distinct()
            .toList();
    return subject instanceof Sweep sweep
        ? Optional.of(Animation.of(sweep, joints, FigureStyle.current()))
        : Optional.empty();
  }

  private static Picture drawn(PositionDrawing drawing, List<JointId> joints) {
    Position position = drawing.position();
    Scene view = Scene.of(position, joints.isEmpty() ? Scene.usual(position) : joints);
    Extras extras = new Extras(drawing.reactions(), drawing.muscles(), drawing.spine());
    return PositionPicture.of(view, FigureStyle.current(), extras);
  }
}
