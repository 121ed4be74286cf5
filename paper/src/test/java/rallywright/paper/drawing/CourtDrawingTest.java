package rallywright.paper.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import rallywright.engine.court.Direction;
import rallywright.engine.court.HalfArea;
import rallywright.engine.court.Lane;
import rallywright.engine.court.Spot;
import rallywright.engine.drill.Advance;
import rallywright.engine.drill.Advice;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.DrillKind;
import rallywright.engine.drill.DrillSide;
import rallywright.engine.drill.Feed;
import rallywright.engine.drill.InBounds;
import rallywright.engine.drill.Intensity;
import rallywright.engine.drill.Layout;
import rallywright.engine.drill.Progression;
import rallywright.engine.drill.Role;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.SkillWeights;
import rallywright.engine.drill.Stand;
import rallywright.engine.score.BySide;
import rallywright.engine.score.Ending.Stroke;

class CourtDrawingTest {

  private static final Drill BACK_AND_UP =
      new Drill(
          new DrillKey("made-up"),
          "Back & up",
          "Made up for this test.",
          "Made up for this test.",
          DrillKind.COOPERATIVE,
          Progression.BASELINE,
          new DrillForm.Timed(
              java.util.Optional.of(
                  new Layout(
                      List.of(Direction.values()),
                      BySide.of(side(Role.BACK, 22.5), side(Role.UP, 7.5)))),
              java.util.Optional.of(new Feed(Feed.By.IN_TURN, "Any ball.")),
              5),
          Intensity.EASY,
          new Advice(List.of(), List.of(), List.of(), List.of("Stop at pain.")));

  @ParameterizedTest
  @EnumSource(Detail.class)
  void drawing_inEveryDetail_isWellFormedAndHasNoStyleAttribute(Detail detail) {
    for (Lane lane : Lane.values()) {
      Element svg = parsed(CourtDrawing.of(BACK_AND_UP, lane).orElseThrow().svg(detail));
      assertThat(svg.getTagName()).isEqualTo("svg");
      for (Element each : elements(svg, "*")) {
        assertThat(each.hasAttribute("style")).isFalse();
        assertThat(each.hasAttribute("id")).as("ids would repeat on a page").isFalse();
      }
    }
  }

  /** 20 ft by 44 ft: rule 2.A.1 (2025); one unit of the drawing is one foot. */
  @Test
  void court_isDrawnToScale() {
    Element svg = parsed(drawing(Lane.STRAIGHT_RIGHT).svg(Detail.SMALL));
    Element ground = elements(svg, "rect").get(0);
    assertThat(number(ground, "width")).isEqualTo(20);
    assertThat(number(ground, "height")).isEqualTo(44);
    assertThat(number(ground, "x")).isEqualTo(-10);
    assertThat(number(ground, "y")).isEqualTo(-22);
  }

  @Test
  void blocks_standWhereThePlayersStand_solidNearAndOutlinedFar() {
    Map<Lane, double[]> across =
        Map.of(
            Lane.STRAIGHT_RIGHT, new double[] {5, 5},
            Lane.STRAIGHT_LEFT, new double[] {-5, -5},
            Lane.CROSS_EVEN, new double[] {5, -5},
            Lane.CROSS_ODD, new double[] {-5, 5});
    across.forEach(
        (lane, expected) -> {
          List<Element> blocks =
              elements(parsed(drawing(lane).svg(Detail.SMALL)), "rect").stream()
                  .filter(rect -> rect.hasAttribute("stroke"))
                  .toList();
          assertThat(blocks).hasSize(2);
          assertThat(blocks.get(0).getAttribute("fill")).isEqualTo("currentColor");
          assertThat(middle(blocks.get(0))[0]).isCloseTo(expected[0], within(0.011));
          assertThat(middle(blocks.get(0))[1]).isCloseTo(22.5, within(0.011));
          assertThat(blocks.get(1).getAttribute("fill")).isEqualTo("none");
          assertThat(middle(blocks.get(1))[0]).isCloseTo(expected[1], within(0.011));
          assertThat(middle(blocks.get(1))[1]).isCloseTo(-7.5, within(0.011));
        });
  }

  @Test
  void labels_standOnlyInTheLabelledDrawing() {
    assertThat(elements(parsed(drawing(Lane.CROSS_ODD).svg(Detail.SMALL)), "text")).isEmpty();
    assertThat(elements(parsed(drawing(Lane.CROSS_ODD).svg(Detail.PAPER)), "text")).isEmpty();
    assertThat(elements(parsed(drawing(Lane.CROSS_ODD).svg(Detail.LABELLED)), "text"))
        .extracting(Element::getTextContent)
        .contains("back", "up", "kitchen", "net");
  }

  @Test
  void drawing_forReadersWhoDoNotSeeIt_saysWhoStandsWhere() {
    CourtDrawing drawing = drawing(Lane.CROSS_EVEN);
    assertThat(drawing.words())
        .isEqualTo(
            "Court from above, even diagonal: near back, 22.5 ft from the net (solid block), far"
                + " up, 7.5 ft from the net (outlined block). Hatched is in bounds.");
    Element svg = parsed(drawing.svg(Detail.LABELLED));
    assertThat(elements(svg, "title").get(0).getTextContent())
        .isEqualTo("Back & up, even diagonal");
    assertThat(elements(svg, "desc").get(0).getTextContent()).isEqualTo(drawing.words());
    assertThat(parsed(drawing.svg(Detail.PAPER)).getAttribute("alt")).isEqualTo(drawing.words());
  }

  @Test
  void bothStraightLanes_ofOneCourt_holdFourPlayers() {
    CourtDrawing both =
        CourtDrawing.of(BACK_AND_UP, List.of(Lane.STRAIGHT_RIGHT, Lane.STRAIGHT_LEFT))
            .orElseThrow();
    assertThat(elements(parsed(both.svg(Detail.PAPER)), "rect"))
        .filteredOn(rect -> rect.hasAttribute("stroke"))
        .hasSize(4);
    assertThat(CourtDrawing.of(BACK_AND_UP, List.of())).isEmpty();
  }

  private static CourtDrawing drawing(Lane lane) {
    return CourtDrawing.of(BACK_AND_UP, lane).orElseThrow();
  }

  private static DrillSide side(Role role, double feetFromNet) {
    return new DrillSide(
        role,
        "Made up for this test.",
        List.of(Stand.everywhere(Spot.feet(5, feetFromNet))),
        InBounds.everywhere(HalfArea.WHOLE_HALF),
        Set.of(Stroke.DROP),
        Advance.FREE,
        SkillWeights.only(Skill.DROP),
        Set.of());
  }

  private static double[] middle(Element rect) {
    return new double[] {
      number(rect, "x") + number(rect, "width") / 2, number(rect, "y") + number(rect, "height") / 2
    };
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  private static List<Element> elements(Element parent, String name) {
    NodeList nodes = parent.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  private static Element parsed(String svg) {
    try {
      Document document =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new InputSource(new StringReader(svg)));
      return document.getDocumentElement();
    } catch (IOException | SAXException | ParserConfigurationException broken) {
      throw new AssertionError("Not well formed: " + svg, broken);
    }
  }
}
