// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.benchlore.measure.Dimension;
import org.benchlore.measure.Quantity;
import org.benchlore.model.Kind;
import org.benchlore.model.Shop;
import org.benchlore.model.Site;
import org.benchlore.model.Tool;
import org.benchlore.model.ToolHolding;
import org.benchlore.store.Library;
import org.benchlore.torque.StatedTorque;
import org.benchlore.torque.wrench.CalibrationRule;
import org.benchlore.torque.wrench.Wrench;
import org.benchlore.torque.wrench.WrenchKind;
import org.benchlore.torque.wrench.WrenchRack;

/**
 * The torque wrenches on the walls of a shop: every tool there whose range is a torque. Calibration holds until the day
 * recorded, else by the shop's own rule from the day of the last one, else by the usual rule.
 */
public final class ShopWrenches {

    private final Library library;

    /**
     * Reads from a library.
     *
     * @param library an open library
     */
    public ShopWrenches(Library library) {
        this.library = library;
    }

    /**
     * Returns the wrenches as they are recorded now. A tool whose range cannot be used is left out.
     *
     * @return none if the library has no shop, or its shop no such tool
     */
    public WrenchRack rack() {
        return new WrenchRack(held().stream().map(HeldWrench::wrench).toList());
    }

    /**
     * Returns the same wrenches with where they stand, for who writes down which of them was used.
     *
     * @return in the order in which the shop names them
     */
    public List<HeldWrench> held() {
        var held = new ArrayList<HeldWrench>();
        library.top(Kind.SHOP.word()).filter(Shop.class::isInstance).map(Shop.class::cast)
                .ifPresent(shop -> shop.getSites().forEach(site -> held.addAll(held(shop, site))));
        return List.copyOf(held);
    }

    private List<HeldWrench> held(Shop shop, Site site) {
        var held = new ArrayList<HeldWrench>();
        for (var holding : site.getTools()) {
            library.resolve(holding.getTool()).filter(Tool.class::isInstance).map(Tool.class::cast)
                    .ifPresent(tool -> wrench(shop, site, holding, tool).ifPresent(wrench -> held.add(new HeldWrench(
                            library.addressOf(holding), library.addressOf(tool).orElseThrow(), wrench))));
        }
        return held;
    }

    private static Optional<Wrench> wrench(Shop shop, Site site, ToolHolding holding, Tool tool) {
        var from = torque(tool.getRangeFrom());
        var to = torque(tool.getRangeTo());
        if (from.isEmpty() || to.isEmpty() || from.get().newtonMetres() >= to.get().newtonMetres()) {
            return Optional.empty();
        }
        var rule = rule(shop);
        return Optional.of(new Wrench(name(site, holding, tool), kind(tool), from.get(), to.get(), due(holding, rule),
                holding.getUses() != null && rule.isWornOut(holding.getUses())));
    }

    private static Optional<StatedTorque> torque(Quantity range) {
        return Optional.ofNullable(range).filter(one -> one.dimension() == Dimension.TORQUE && one.value().signum() > 0)
                .map(StatedTorque::of);
    }

    /** No field says so; a screwdriver is told by its name, and taken for a wrench it would promise too much. */
    private static WrenchKind kind(Tool tool) {
        return tool.getTitle() != null && tool.getTitle().toLowerCase(Locale.ROOT).contains("screwdriver")
                ? WrenchKind.SCREWDRIVER : WrenchKind.SETTING;
    }

    private static String name(Site site, ToolHolding holding, Tool tool) {
        var name = new StringBuilder(tool.getTitle() == null ? tool.getId() : tool.getTitle());
        if (holding.getSerial() != null) {
            name.append(", ").append(holding.getSerial());
        }
        if (holding.getPlace() != null) {
            name.append(" (").append(site.getTitle() == null ? "" : site.getTitle() + ", ").append(holding.getPlace())
                    .append(')');
        }
        return name.toString();
    }

    private static Optional<LocalDate> due(ToolHolding holding, CalibrationRule rule) {
        return Optional.ofNullable(holding.getCalibrationDue())
                .or(() -> Optional.ofNullable(holding.getCalibratedOn()).map(rule::due));
    }

    private static CalibrationRule rule(Shop shop) {
        int months = Optional.ofNullable(shop.getCalibrationMonths()).filter(n -> n > 0)
                .orElse(CalibrationRule.DEFAULT.months());
        int uses = Optional.ofNullable(shop.getCalibrationUses()).filter(n -> n > 0)
                .orElse(CalibrationRule.DEFAULT.uses());
        return new CalibrationRule(Math.min(months, 60), Math.min(uses, 100_000));
    }
}
