package hingeleaf.web;

import io.javalin.http.Handler;
import java.util.List;

/** One thing that can be asked; the list of them is what the API's document must tell. */
record Route(String method, String path, Handler handler) {

  static List<Route> all(StartApi start, CardApi card, Assets assets) {
    return List.of(
        new Route("GET", "/", assets::page),
        new Route("GET", "/page/{file}", assets::file),
        new Route("GET", "/fonts/{file}", assets::font),
        new Route("GET", "/three/{file}", assets::three),
        new Route("GET", "/api/openapi.json", Route::document),
        new Route("GET", "/api/start", start::start),
        new Route("PUT", "/api/settings", start::settings),
        new Route("GET", "/api/examples/{name}/picture", start::examplePicture),
        new Route("GET", "/api/examples/{name}/scene", start::exampleScene),
        new Route("GET", "/api/structures/{name}/picture", start::structurePicture),
        new Route("POST", "/api/cards", start::create),
        new Route("POST", "/api/drawings", start::drawing),
        new Route("GET", "/api/cards/{name}", card::card),
        new Route("POST", "/api/cards/{name}/edit", card::edit),
        new Route("POST", "/api/cards/{name}/undo", card::undo),
        new Route("POST", "/api/cards/{name}/redo", card::redo),
        new Route("GET", "/api/cards/{name}/findings", card::findings),
        new Route("GET", "/api/cards/{name}/chapters/{chapter}", card::chapter),
        new Route("GET", "/api/cards/{name}/mends", card::mends),
        new Route("POST", "/api/cards/{name}/mend", card::mend),
        new Route("GET", "/api/cards/{name}/flats", card::flats),
        new Route("GET", "/api/cards/{name}/motion", card::motion),
        new Route("GET", "/api/cards/{name}/doors", card::doors),
        new Route("GET", "/api/cards/{name}/sight", card::sight),
        new Route("GET", "/api/cards/{name}/sight/grid", card::sightGrid),
        new Route("POST", "/api/stop", card::stop),
        new Route("GET", "/api/cards/{name}/results", card::results),
        new Route("GET", "/api/cards/{name}/picture", card::picture),
        new Route("GET", "/api/cards/{name}/design", card::design),
        new Route("GET", "/api/cards/{name}/files", card::fileList),
        new Route("GET", "/api/cards/{name}/file", card::file),
        new Route("GET", "/api/cards/{name}/pack.zip", card::zip));
  }

  private static void document(io.javalin.http.Context c) {
    CardApi.json(c, Assets.text("/hingeleaf/web/openapi.json"));
  }
}
