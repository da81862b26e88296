package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.TypedQuery;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;

/** Trees within reach as lists: by name for a search, and page by page in an order to choose. */
@ApplicationScoped
@Transactional
public class TreeLists {

    /** In what order trees are listed; of equals by name. */
    public enum Order {
        NAME("t.label"),
        SPECIES("t.species, t.label"),
        KEEPER("p.name, t.label"),
        ARRIVED("t.cameOn desc, t.label");

        private final String by;

        Order(String by) {
            this.by = by;
        }
    }

    /**
     * Which trees are asked for.
     *
     * @param species null for any
     * @param keeperId null for anybody's
     */
    public record Asked(@Nullable String species, @Nullable Long keeperId, Order order) {}

    /** Rows of a file: more trees than a school has. */
    private static final int MOST_IN_A_FILE = 10_000;

    private static final String FROM =
            " from TreeEntity t join PersonEntity p on p.id = t.keeperId"
                    + " join SiteEntity s on s.id = t.siteId where t."
                    + TreeRows.HERE;

    private static final String LINE =
            "select new org.ripewood.trees.TreeLine(t.id, t.label, t.species, t.keeperId, p.name,"
                    + " s.name, t.cameOn, t.leftOn)";

    private final TreeRows rows;
    private final People people;
    private final EntityManager entities;

    TreeLists(TreeRows rows, People people, EntityManager entities) {
        this.rows = rows;
        this.people = people;
        this.entities = entities;
    }

    /** Names of all trees within reach, those that left among them, in one query. */
    public List<TreeName> names(Actor actor) {
        return rows.names(people.reachable(actor));
    }

    /** Trees at the school within reach, those that left not among them. */
    public Paged<TreeLine> page(Actor actor, Asked asked, PageRequest page) {
        var where = where(people.reachable(actor), asked);
        var found =
                where.asked(entities, LINE, TreeLine.class, asked.order())
                        .setFirstResult(page.page() * page.size())
                        .setMaxResults(page.size())
                        .getResultList();
        var total = where.asked(entities, "select count(t)", Long.class, null).getSingleResult();
        return Paged.of(found, page, total);
    }

    /** The same, all of them at once, at most 10,000. */
    public List<TreeLine> all(Actor actor, Asked asked) {
        return where(people.reachable(actor), asked)
                .asked(entities, LINE, TreeLine.class, asked.order())
                .setMaxResults(MOST_IN_A_FILE)
                .getResultList();
    }

    /** Names of those within reach who keep trees at the school, by id, in the order of names. */
    public Map<Long, String> keepers(Actor actor) {
        var keepers = new LinkedHashMap<Long, String>();
        where(people.reachable(actor), new Asked(null, null, Order.NAME))
                .asked(entities, "select distinct t.keeperId, p.name", Object[].class, null)
                .getResultList()
                .stream()
                .sorted((one, other) -> ((String) one[1]).compareToIgnoreCase((String) other[1]))
                .forEach(row -> keepers.put((Long) row[0], (String) row[1]));
        return keepers;
    }

    /** Codes of the species of the trees at the school within reach. */
    public List<String> species(Actor actor) {
        return where(people.reachable(actor), new Asked(null, null, Order.NAME))
                .asked(entities, "select distinct t.species", String.class, null)
                .getResultList();
    }

    /** A condition and what stands in it. */
    private record Where(String text, Map<String, Object> values) {

        <T> TypedQuery<T> asked(
                EntityManager entities, String what, Class<T> type, @Nullable Order order) {
            var end = order == null ? "" : " order by " + order.by + ", t.id";
            var query = entities.createQuery(what + FROM + text + end, type);
            values.forEach(query::setParameter);
            return query;
        }
    }

    private static Where where(@Nullable Collection<Long> keepers, Asked asked) {
        var parts = new ArrayList<String>();
        var values = new LinkedHashMap<String, Object>();
        if (keepers != null) {
            parts.add(" and t.keeperId in :keepers");
            values.put("keepers", keepers);
        }
        if (asked.species() != null) {
            parts.add(" and t.species = :species");
            values.put("species", asked.species());
        }
        if (asked.keeperId() != null) {
            parts.add(" and t.keeperId = :keeper");
            values.put("keeper", asked.keeperId());
        }
        return new Where(String.join("", parts), values);
    }
}
