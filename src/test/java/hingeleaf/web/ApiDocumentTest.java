package hingeleaf.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The document of the API (OpenAPI 3.1) tells what the server does. */
@Timeout(180)
class ApiDocumentTest {
  @TempDir Path home;
  private final JsonNode document =
      new JsonMapper().readTree(Assets.text("/hingeleaf/web/openapi.json"));

  @Test
  void tellsEveryRouteAndNoOther() {
    Set<String> served = new TreeSet<>();
    ServedPage.routes(home).forEach(r -> served.add(r.method() + " " + r.path()));
    Set<String> told = new TreeSet<>();
    for (Map.Entry<String, JsonNode> path : document.get("paths").properties()) {
      path.getValue()
          .propertyNames()
          .forEach(m -> told.add(m.toUpperCase(java.util.Locale.ROOT) + " " + path.getKey()));
    }
    assertThat(told).isEqualTo(served);
  }

  @Test
  void answersAreAsTold() throws IOException, InterruptedException {
    try (ServedPage page = new ServedPage(home)) {
      String card = "/api/cards/" + page.example("fair-winds");
      holds("Start", page.get("/api/start").body());
      holds("Card", page.get(card).body());
      holds("Flats", page.get(card + "/flats").body());
      holds("Motion", page.get(card + "/motion?rest=0").body());
      holds("Doors", page.get(card + "/doors").body());
      holds("Sight", page.get(card + "/sight?right=-20&above=20&distance=300").body());
      holds("SightGrid", page.get(card + "/sight/grid?distance=far").body());
      holds("Refusal", page.get(card + "/sight?right=200").body());
      holds("Stop", page.post("/api/stop", "{\"ask\":\"nobody-waits\"}").body());
      holds("Results", page.get(card + "/results").body());
      holds("Findings", page.get(card + "/findings").body());
      holds("Mends", page.get(card + "/mends").body());
      holds("Chapter", page.get(card + "/chapters/price?copies=20").body());
      holds("Card", page.post(card + "/undo", "{}").body());
      holds("Refusal", page.get("/api/cards/none.yaml").body());
      holds("Refusal", page.get(card + "/chapters/none").body());
      holds("Refusal", page.get(card + "/chapters/price?copies=0").body());
      assertThat(page.bugs).isEmpty();
    }
  }

  private void holds(String name, String body) {
    ObjectNode schema = new JsonMapper().createObjectNode();
    schema.put("$ref", "#/components/schemas/" + name);
    schema.set("components", document.get("components"));
    Schema s =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(schema);
    assertThat(s.validate(new JsonMapper().readTree(body))).as(name).isEmpty();
  }
}
