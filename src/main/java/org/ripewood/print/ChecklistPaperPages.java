package org.ripewood.print;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.ripewood.aftercare.Aftercare;
import org.ripewood.boards.Checklist;
import org.ripewood.boards.ChecklistMaker;
import org.ripewood.people.People;
import org.ripewood.platform.CurrentUser;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeDays;
import org.ripewood.trees.Trees;

/** A tree's checklist on paper, with boxes to tick and lines to write on. */
@Path("/trees/{id: \\d{1,18}}/checklist/print")
@Authenticated
class ChecklistPaperPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance checklist(
                Tree tree, String keeper, Checklist list, CareOnPaper care);
    }

    private final CurrentUser user;
    private final People people;
    private final Trees trees;
    private final ChecklistMaker checklistMaker;
    private final Aftercare aftercare;
    private final TreeDays treeDays;

    ChecklistPaperPages(
            CurrentUser user,
            People people,
            Trees trees,
            ChecklistMaker checklistMaker,
            Aftercare aftercare,
            TreeDays treeDays) {
        this.user = user;
        this.people = people;
        this.trees = trees;
        this.checklistMaker = checklistMaker;
        this.aftercare = aftercare;
        this.treeDays = treeDays;
    }

    @GET
    @Produces(MediaType.TEXT_HTML)
    public String checklist(long id) {
        var actor = user.actor();
        var tree = trees.get(actor, id);
        var list = checklistMaker.make(actor, id, treeDays.at(id));
        return Templates.checklist(
                        tree,
                        people.name(tree.keeperId()),
                        list,
                        CareOnPaper.of(aftercare.of(actor, id, treeDays.at(id)), list))
                .render();
    }
}
