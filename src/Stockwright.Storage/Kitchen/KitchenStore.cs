using Microsoft.EntityFrameworkCore;
using Stockwright.Kitchen;

namespace Stockwright.Storage.Kitchen;

/// <summary>The kitchen: site, pots, hobs, ovens and trays, read whole and edited piece by piece.</summary>
public sealed class KitchenStore(IDbContextFactory<StockwrightContext> contexts, KitchenScope scope, TimeProvider time)
{
    private int Key => scope.KitchenId;

    /// <summary>Reads the kitchen.</summary>
    /// <exception cref="InvalidOperationException">The database was not prepared.</exception>
    public async Task<KeptKitchen> ReadAsync(CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        KitchenEntity kitchen = await context.Kitchens.AsNoTracking().SingleOrDefaultAsync(row => row.Id == Key, cancellationToken)
            ?? throw new InvalidOperationException("There is no kitchen in the database: prepare it first.");
        return new KeptKitchen(
            new(new KitchenDetails(kitchen.Name, kitchen.TimeZoneId, kitchen.ToSite()), kitchen.Version),
            await ReadRowsAsync<PotEntity, Pot>(context, row => row.ToPot(), cancellationToken),
            await ReadRowsAsync<HobEntity, Hob>(context, row => row.ToHob(), cancellationToken),
            await ReadRowsAsync<OvenEntity, Oven>(context, row => row.ToOven(), cancellationToken),
            await ReadRowsAsync<TrayEntity, Tray>(context, row => row.ToTray(), cancellationToken));
    }

    /// <summary>Writes name, time zone, air, room and tap.</summary>
    public async Task<SaveOutcome> SaveDetailsAsync(KitchenDetails details, int version, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        KitchenEntity? kitchen = await context.Kitchens.SingleOrDefaultAsync(row => row.Id == Key, cancellationToken);
        return await context.EditAsync(kitchen, version, row => row.Take(details), cancellationToken);
    }

    /// <summary>Adds a pot under a new stable name, last in the cook's order.</summary>
    /// <param name="pot">The pot.</param>
    /// <param name="formKey">Key of the form: the same one sent again adds nothing. Null when it has none.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    /// <returns>The stable name given; that of <paramref name="pot"/> is not used.</returns>
    public Task<string> AddAsync(Pot pot, string? formKey = null, CancellationToken cancellationToken = default) =>
        AddRowAsync(new PotEntity { Id = "", Name = "" }, pot.Name, "pot", row => row.Take(pot), formKey, cancellationToken);

    /// <summary>Adds a hob under a new stable name.</summary>
    /// <param name="hob">The hob.</param>
    /// <param name="formKey">Key of the form: the same one sent again adds nothing. Null when it has none.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    /// <returns>The stable name given.</returns>
    public Task<string> AddAsync(Hob hob, string? formKey = null, CancellationToken cancellationToken = default) =>
        AddRowAsync(new HobEntity { Id = "", Name = "" }, hob.Name, "hob", row => row.Take(hob), formKey, cancellationToken);

    /// <summary>Adds an oven under a new stable name.</summary>
    /// <param name="oven">The oven.</param>
    /// <param name="formKey">Key of the form: the same one sent again adds nothing. Null when it has none.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    /// <returns>The stable name given.</returns>
    public Task<string> AddAsync(Oven oven, string? formKey = null, CancellationToken cancellationToken = default) =>
        AddRowAsync(new OvenEntity { Id = "", Name = "" }, oven.Name, "oven", row => row.Take(oven), formKey, cancellationToken);

    /// <summary>Adds a tray under a new stable name.</summary>
    /// <param name="tray">The tray.</param>
    /// <param name="formKey">Key of the form: the same one sent again adds nothing. Null when it has none.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    /// <returns>The stable name given.</returns>
    public Task<string> AddAsync(Tray tray, string? formKey = null, CancellationToken cancellationToken = default) =>
        AddRowAsync(new TrayEntity { Id = "", Name = "" }, tray.Name, "tray", row => row.Take(tray), formKey, cancellationToken);

    /// <summary>Writes a pot over the one with the same stable name.</summary>
    public Task<SaveOutcome> SaveAsync(Pot pot, int version, CancellationToken cancellationToken = default) =>
        SaveRowAsync<PotEntity>(pot.Id, version, row => row.Take(pot), cancellationToken);

    /// <summary>Writes a hob over the one with the same stable name.</summary>
    public Task<SaveOutcome> SaveAsync(Hob hob, int version, CancellationToken cancellationToken = default) =>
        SaveRowAsync<HobEntity>(hob.Id, version, row => row.Take(hob), cancellationToken);

    /// <summary>Writes an oven over the one with the same stable name.</summary>
    public Task<SaveOutcome> SaveAsync(Oven oven, int version, CancellationToken cancellationToken = default) =>
        SaveRowAsync<OvenEntity>(oven.Id, version, row => row.Take(oven), cancellationToken);

    /// <summary>Writes a tray over the one with the same stable name.</summary>
    public Task<SaveOutcome> SaveAsync(Tray tray, int version, CancellationToken cancellationToken = default) =>
        SaveRowAsync<TrayEntity>(tray.Id, version, row => row.Take(tray), cancellationToken);

    /// <summary>Deletes a pot.</summary>
    public Task<SaveOutcome> DeletePotAsync(string id, int version, CancellationToken cancellationToken = default) =>
        DeleteRowAsync<PotEntity>(id, version, cancellationToken);

    /// <summary>Deletes a hob.</summary>
    public Task<SaveOutcome> DeleteHobAsync(string id, int version, CancellationToken cancellationToken = default) =>
        DeleteRowAsync<HobEntity>(id, version, cancellationToken);

    /// <summary>Deletes an oven.</summary>
    public Task<SaveOutcome> DeleteOvenAsync(string id, int version, CancellationToken cancellationToken = default) =>
        DeleteRowAsync<OvenEntity>(id, version, cancellationToken);

    /// <summary>Deletes a tray.</summary>
    public Task<SaveOutcome> DeleteTrayAsync(string id, int version, CancellationToken cancellationToken = default) =>
        DeleteRowAsync<TrayEntity>(id, version, cancellationToken);

    private async Task<IReadOnlyList<Kept<TRecord>>> ReadRowsAsync<TRow, TRecord>(
        StockwrightContext context, Func<TRow, TRecord> map, CancellationToken cancellationToken)
        where TRow : class, IKitchenRow
    {
        List<TRow> rows = await context.Set<TRow>().AsNoTracking()
            .Where(row => row.KitchenId == Key)
            .OrderBy(row => row.Position).ThenBy(row => row.Id)
            .ToListAsync(cancellationToken);
        return [.. rows.Select(row => new Kept<TRecord>(map(row), row.Version))];
    }

    private Task<string> AddRowAsync<TRow>(
        TRow row, string name, string fallback, Action<TRow> take, string? formKey, CancellationToken cancellationToken)
        where TRow : class, IKitchenRow => contexts.AddNamedAsync(formKey, time.GetUtcNow(), async context =>
    {
        var others = await context.Set<TRow>().AsNoTracking()
            .Where(other => other.KitchenId == Key)
            .Select(other => new { other.Id, other.Position })
            .ToListAsync(cancellationToken);
        row.KitchenId = Key;
        row.Id = StableNames.Make(name, fallback, others.Select(other => other.Id).ToHashSet(StringComparer.Ordinal));
        row.Position = others.Select(other => other.Position).DefaultIfEmpty(0).Max() + 1;
        row.Version = 1;
        take(row);
        context.Add(row);
        return row.Id;
    }, cancellationToken);

    private async Task<SaveOutcome> SaveRowAsync<TRow>(string id, int version, Action<TRow> take, CancellationToken cancellationToken)
        where TRow : class, IKitchenRow
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        TRow? row = await context.Set<TRow>().FindAsync([Key, id], cancellationToken);
        return await context.EditAsync(row, version, take, cancellationToken);
    }

    private async Task<SaveOutcome> DeleteRowAsync<TRow>(string id, int version, CancellationToken cancellationToken)
        where TRow : class, IKitchenRow
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        TRow? row = await context.Set<TRow>().FindAsync([Key, id], cancellationToken);
        return await context.RemoveAsync(row, version, cancellationToken);
    }
}
