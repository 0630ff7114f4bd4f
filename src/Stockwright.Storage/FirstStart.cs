using Microsoft.EntityFrameworkCore;
using Stockwright.Kitchen;
using Stockwright.Storage.Demo;

namespace Stockwright.Storage;

/// <summary>Puts a kitchen into a database that does not have it yet: the demonstration's or an empty one.</summary>
public sealed class FirstStart(IDbContextFactory<StockwrightContext> contexts, KitchenScope scope, TimeProvider time)
{
    /// <summary>Name of the kitchen before the cook gives it one.</summary>
    public const string EmptyKitchenName = "My kitchen";

    private int Key => scope.KitchenId;

    /// <summary>Makes the kitchen when it is not there yet; does nothing otherwise.</summary>
    /// <param name="withDemo">True for the demonstration kitchen, false for an empty one.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    /// <returns>True when it was made now.</returns>
    public async Task<bool> EnsureKitchenAsync(bool withDemo, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        if (await context.Kitchens.AnyAsync(row => row.Id == Key, cancellationToken))
        {
            if (await context.Kitchens.AnyAsync(row => row.Id == Key && row.CalendarToken == null, cancellationToken))
            {
                // As earlier versions left it.
                await context.GiveCalendarTokenAsync(Key, renew: false, cancellationToken);
            }

            return false;
        }

        KitchenEntity kitchen = new() { Id = Key, Name = "", TimeZoneId = "", CalendarToken = CalendarSecret.New(), Version = 1 };
        kitchen.Take(withDemo ? DemoKitchen.Details : new KitchenDetails(EmptyKitchenName, "UTC", new()));
        context.Add(kitchen);
        if (withDemo)
        {
            Furnish(context);
            SavePlans(context, time.GetUtcNow());
        }

        // One write for all: a start cut short leaves a database that is still fresh.
        try
        {
            await context.SaveChangesAsync(cancellationToken);
            return true;
        }
        catch (DbUpdateException)
        {
            context.ChangeTracker.Clear();
            if (await context.Kitchens.AnyAsync(row => row.Id == Key, cancellationToken))
            {
                // Another program started on the same data at the same moment and was first.
                return false;
            }

            throw;
        }
    }

    private void SavePlans(StockwrightContext context, DateTimeOffset now)
    {
        foreach (DemoPlans.DemoPlan plan in DemoPlans.After(now))
        {
            context.Add(PlanStore.NewRow(Key, plan.Name, plan.Document, plan.Note, now));
        }
    }

    private void Furnish(StockwrightContext context)
    {
        int position = 0;
        foreach (Pot pot in DemoKitchen.Pots)
        {
            PotEntity row = new() { KitchenId = Key, Id = pot.Id, Name = "", Position = ++position, Version = 1 };
            row.Take(pot);
            context.Add(row);
        }

        foreach (Hob hob in DemoKitchen.Hobs)
        {
            HobEntity row = new() { KitchenId = Key, Id = hob.Id, Name = "", Position = ++position, Version = 1 };
            row.Take(hob);
            context.Add(row);
        }

        OvenEntity oven = new() { KitchenId = Key, Id = DemoKitchen.Oven.Id, Name = "", Position = ++position, Version = 1 };
        oven.Take(DemoKitchen.Oven);
        context.Add(oven);
        foreach (Tray tray in DemoKitchen.Trays)
        {
            TrayEntity row = new() { KitchenId = Key, Id = tray.Id, Name = "", Position = ++position, Version = 1 };
            row.Take(tray);
            context.Add(row);
        }
    }
}
