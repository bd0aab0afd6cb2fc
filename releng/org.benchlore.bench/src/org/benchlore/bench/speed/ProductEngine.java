// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import org.benchlore.bench.product.Product;

/**
 * The product, given what was typed and nothing else: it has to find out by itself what kind of query it is.
 *
 * @param product the product
 * @param all whether rows come with passages, reasons and counts, as after a pause in typing
 */
record ProductEngine(Product product, boolean all) implements Engine {

    private static final int ROWS = 10;

    @Override
    public String name() {
        return all ? PRODUCT_ALL : PRODUCT;
    }

    @Override
    public boolean knows(QueryClass kind) {
        return true;
    }

    @Override
    public int search(QueryClass kind, String typed) {
        return all ? product.look(typed, ROWS) : product.find(typed, ROWS).size();
    }
}
