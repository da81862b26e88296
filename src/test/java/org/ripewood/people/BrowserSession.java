package org.ripewood.people;

import static io.restassured.RestAssured.given;

import io.restassured.response.Response;
import java.util.Map;

/** Requests as a browser makes them, with a session's cookie or without. */
public final class BrowserSession {

    public static final String COOKIE = "ripewood-session";

    private BrowserSession() {}

    /** The session's cookie; null when it was not let in. */
    public static String signIn(String login, String password) {
        return answer(login, password).getCookie(COOKIE);
    }

    /** The session's next cookie, once it has shown that it is its owner's; null otherwise. */
    public static String confirm(String session, String password) {
        return confirmation(session, password).getCookie(COOKIE);
    }

    public static Response confirmation(String session, String password) {
        return given().cookie(COOKIE, session)
                .header("X-Ripewood", "1")
                .contentType("application/json")
                .body(Map.of("password", password))
                .post("/api/v1/people/me/confirmation");
    }

    public static Response answer(String login, String password) {
        return given().redirects()
                .follow(false)
                .contentType("application/x-www-form-urlencoded; charset=UTF-8")
                .formParam("j_username", login)
                .formParam("j_password", password)
                .post("/j_security_check");
    }

    public static Response get(String path, String session) {
        return given().redirects().follow(false).cookie(COOKIE, session).get(path);
    }

    /** The token that forms of a session's person carry. */
    static String formToken(String session) {
        var token = get("/rehearsal/open", session).getCookie("ripewood-csrf");
        // whoever has to set up a second factor reads that page alone
        return token != null
                ? token
                : get("/account/second-factor", session).getCookie("ripewood-csrf");
    }

    /** Sends a form with its token. */
    public static Response post(String path, String session, Object... fields) {
        var token = formToken(session);
        var request =
                given().redirects()
                        .follow(false)
                        .cookie(COOKIE, session)
                        .cookie("ripewood-csrf", token)
                        .contentType("application/x-www-form-urlencoded; charset=UTF-8")
                        .formParam("csrf-token", token);
        for (int i = 0; i < fields.length; i += 2) {
            request.formParam((String) fields[i], fields[i + 1]);
        }
        return request.post(path);
    }
}
