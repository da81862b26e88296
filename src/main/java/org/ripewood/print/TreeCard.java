package org.ripewood.print;

import java.net.URI;
import org.ripewood.course.Content;
import org.ripewood.pictures.QrCode;
import org.ripewood.trees.Tree;

/**
 * What hangs on a tree in the open, for everybody to read: nothing of its keeper.
 *
 * @param address of the tree's page, where only those who reach the tree are let in
 */
record TreeCard(
        long treeId, String label, String common, String latin, String address, QrCode code) {

    /**
     * The card of a tree.
     *
     * @param base of all addresses, ending in a slash
     */
    static TreeCard of(Tree tree, Content content, URI base) {
        var species = content.kindOf(tree.species());
        var address = base.resolve("trees/" + tree.id()).toString();
        return new TreeCard(
                tree.id(),
                tree.label(),
                species.common(),
                species.latin(),
                address,
                QrCode.of(address));
    }
}
