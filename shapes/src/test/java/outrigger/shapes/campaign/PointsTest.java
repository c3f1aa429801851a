package outrigger.shapes.campaign;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;
import outrigger.shapes.campaign.Expression.Op;
import outrigger.shapes.mesh.Mesher;

class PointsTest {
  private static final RandomExpression DRAWN = RandomExpression.large(1);

  @Test
  void differing_meshOfTheExpression_findsNone() {
    assertEquals("", Points.differing(DRAWN.with(Op.UNION), Mesher.mesh(DRAWN.with(Op.UNION).solid()), new Random(1)));
  }

  @Test
  void differing_meshOfAnotherExpression_namesAPoint() {
    assertNotEquals("", Points.differing(DRAWN.with(Op.CUT), Mesher.mesh(DRAWN.with(Op.UNION).solid()), new Random(1)));
  }
}
