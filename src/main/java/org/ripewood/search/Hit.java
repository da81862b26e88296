package org.ripewood.search;

/**
 * One thing that was found.
 *
 * @param key its id, or its code in the content
 * @param about what tells it from others of the name; may be empty
 * @param page the address of its page in the service
 */
public record Hit(Kind kind, String key, String title, String about, String page) {

    static Hit of(Kind kind, String key, String title, String about) {
        return new Hit(kind, key, title, about, kind.page(key));
    }
}
