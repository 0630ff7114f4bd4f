using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using Stockwright.Kitchen;

namespace Stockwright.Storage;

/// <summary>
/// The tables. Amounts are doubles in SI with the unit in the column's name, moments are UTC, and every row that
/// can be edited carries a version that a second writer trips over.
/// </summary>
public sealed class StockwrightContext(DbContextOptions<StockwrightContext> options) : DbContext(options)
{
    private const int NameLength = 200;

    internal DbSet<KitchenEntity> Kitchens => Set<KitchenEntity>();

    internal DbSet<PotEntity> Pots => Set<PotEntity>();

    internal DbSet<HobEntity> Hobs => Set<HobEntity>();

    internal DbSet<OvenEntity> Ovens => Set<OvenEntity>();

    internal DbSet<TrayEntity> Trays => Set<TrayEntity>();

    internal DbSet<OwnRecipeEntity> Recipes => Set<OwnRecipeEntity>();

    internal DbSet<OwnIngredientEntity> Ingredients => Set<OwnIngredientEntity>();

    internal DbSet<SavedPlanEntity> Plans => Set<SavedPlanEntity>();

    internal DbSet<SentFormEntity> SentForms => Set<SentFormEntity>();

    internal DbSet<BatchEntity> Batches => Set<BatchEntity>();

    internal DbSet<BatchPlanEntity> BatchPlans => Set<BatchPlanEntity>();

    internal DbSet<LogEntryEntity> LogEntries => Set<LogEntryEntity>();

    internal DbSet<PhotoEntity> Photos => Set<PhotoEntity>();

    /// <inheritdoc/>
    public override Task<int> SaveChangesAsync(bool acceptAllChangesOnSuccess, CancellationToken cancellationToken = default)
    {
        RaiseVersions();
        return base.SaveChangesAsync(acceptAllChangesOnSuccess, cancellationToken);
    }

    /// <inheritdoc/>
    public override int SaveChanges(bool acceptAllChangesOnSuccess)
    {
        RaiseVersions();
        return base.SaveChanges(acceptAllChangesOnSuccess);
    }

    /// <inheritdoc/>
    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        ArgumentNullException.ThrowIfNull(configurationBuilder);

        // Not DateTimeOffset: SQLite cannot order by it. Not a bare DateTime: it would come back without its kind.
        configurationBuilder.Properties<DateTime>().HaveConversion<UtcConverter>();
        configurationBuilder.Properties<WallMaterial>().HaveConversion<string>().HaveMaxLength(NameLength);
        configurationBuilder.Properties<PotKind>().HaveConversion<string>().HaveMaxLength(NameLength);
        configurationBuilder.Properties<HobKind>().HaveConversion<string>().HaveMaxLength(NameLength);
    }

    /// <inheritdoc/>
    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        ArgumentNullException.ThrowIfNull(modelBuilder);

        modelBuilder.Entity<KitchenEntity>(kitchen =>
        {
            kitchen.ToTable("Kitchens");
            kitchen.Property(row => row.Id).ValueGeneratedNever();
            kitchen.Property(row => row.Name).HasMaxLength(NameLength);
            kitchen.Property(row => row.TimeZoneId).HasMaxLength(NameLength);
            kitchen.Property(row => row.CalendarToken).HasMaxLength(NameLength);
            kitchen.Property(row => row.Version).IsConcurrencyToken();
        });
        KitchenRows<PotEntity>(modelBuilder, "Pots");
        KitchenRows<HobEntity>(modelBuilder, "Hobs");
        KitchenRows<OvenEntity>(modelBuilder, "Ovens");
        KitchenRows<TrayEntity>(modelBuilder, "Trays");
        modelBuilder.Entity<OwnRecipeEntity>(recipe =>
        {
            recipe.ToTable("Recipes");
            recipe.HasKey(row => new { row.KitchenId, row.Id });
            recipe.HasOne<KitchenEntity>().WithMany().HasForeignKey(row => row.KitchenId);
            recipe.Property(row => row.Id).HasMaxLength(NameLength);
            recipe.Property(row => row.Name).HasMaxLength(NameLength);
            recipe.Property(row => row.CopiedFrom).HasMaxLength(NameLength);
            recipe.Property(row => row.Version).IsConcurrencyToken();
        });
        modelBuilder.Entity<OwnIngredientEntity>(ingredient =>
        {
            ingredient.ToTable("Ingredients");
            ingredient.HasKey(row => new { row.KitchenId, row.Id });
            ingredient.HasOne<KitchenEntity>().WithMany().HasForeignKey(row => row.KitchenId);
            ingredient.Property(row => row.Id).HasMaxLength(NameLength);
            ingredient.Property(row => row.Name).HasMaxLength(NameLength);
            ingredient.Property(row => row.Version).IsConcurrencyToken();
        });
        modelBuilder.Entity<SavedPlanEntity>(plan =>
        {
            plan.ToTable("Plans");
            plan.Property(row => row.Id).ValueGeneratedNever();
            plan.HasOne<KitchenEntity>().WithMany().HasForeignKey(row => row.KitchenId);
            plan.HasIndex(row => new { row.KitchenId, row.UpdatedUtc });
            plan.Property(row => row.Name).HasMaxLength(NameLength);
            plan.Property(row => row.RecipeName).HasMaxLength(NameLength);
            plan.Property(row => row.PotName).HasMaxLength(NameLength);
            plan.Property(row => row.Version).IsConcurrencyToken();
        });
        modelBuilder.Entity<SentFormEntity>(form =>
        {
            form.ToTable("SentForms");
            form.HasKey(row => row.Key);
            form.Property(row => row.Key).HasMaxLength(NameLength);
            form.Property(row => row.Added).HasMaxLength(NameLength);
        });
        Logbook(modelBuilder);
    }

    /// <summary>Rows that are added and never changed; the migration makes triggers that refuse the rest.</summary>
    private static void Logbook(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<BatchEntity>(batch =>
        {
            batch.ToTable("Batches");
            batch.Property(row => row.Id).ValueGeneratedNever();
            batch.HasOne<KitchenEntity>().WithMany().HasForeignKey(row => row.KitchenId).OnDelete(DeleteBehavior.Restrict);
            batch.HasIndex(row => new { row.KitchenId, row.BeginsUtc });
            batch.Property(row => row.Name).HasMaxLength(NameLength);
            batch.Property(row => row.RecipeName).HasMaxLength(NameLength);
            batch.Property(row => row.PotName).HasMaxLength(NameLength);
            batch.Property(row => row.LimitId).HasMaxLength(NameLength);
        });
        modelBuilder.Entity<BatchPlanEntity>(plan =>
        {
            plan.ToTable("BatchPlans");
            plan.HasKey(row => row.BatchId);
            plan.Property(row => row.BatchId).ValueGeneratedNever();
            plan.HasOne<BatchEntity>().WithOne().HasForeignKey<BatchPlanEntity>(row => row.BatchId).OnDelete(DeleteBehavior.Restrict);
        });
        modelBuilder.Entity<LogEntryEntity>(entry =>
        {
            entry.ToTable("LogEntries");
            entry.HasKey(row => row.Sequence);
            entry.HasAlternateKey(row => row.Id);
            entry.HasOne<BatchEntity>().WithMany().HasForeignKey(row => row.BatchId).OnDelete(DeleteBehavior.Restrict);
            entry.HasIndex(row => new { row.BatchId, row.Sequence });
            entry.HasIndex(row => new { row.BatchId, row.Kind });
            entry.HasIndex(row => row.Corrects);
            entry.Property(row => row.Who).HasMaxLength(NameLength);
            entry.Property(row => row.DeviceZone).HasMaxLength(NameLength);
            entry.Property(row => row.Kind).HasMaxLength(NameLength);
        });
        modelBuilder.Entity<PhotoEntity>(photo =>
        {
            photo.ToTable("Photos");
            photo.HasKey(row => row.EntryId);
            photo.Property(row => row.EntryId).ValueGeneratedNever();
            photo.HasOne<LogEntryEntity>().WithOne().HasForeignKey<PhotoEntity>(row => row.EntryId)
                .HasPrincipalKey<LogEntryEntity>(row => row.Id).OnDelete(DeleteBehavior.Restrict);
        });
    }

    private static void KitchenRows<T>(ModelBuilder modelBuilder, string table)
        where T : class, IKitchenRow =>
        modelBuilder.Entity<T>(entity =>
        {
            entity.ToTable(table);
            entity.HasKey(nameof(IKitchenRow.KitchenId), nameof(IKitchenRow.Id));
            entity.HasOne<KitchenEntity>().WithMany().HasForeignKey(nameof(IKitchenRow.KitchenId));
            entity.Property<string>(nameof(IKitchenRow.Id)).HasMaxLength(NameLength);
            entity.Property<string>("Name").HasMaxLength(NameLength);
            entity.Property<int>(nameof(IVersioned.Version)).IsConcurrencyToken();
        });

    private void RaiseVersions()
    {
        foreach (var entry in ChangeTracker.Entries<IVersioned>().Where(entry => entry.State == EntityState.Modified))
        {
            var version = entry.Property(row => row.Version);
            version.CurrentValue = version.OriginalValue + 1;
        }
    }

    private sealed class UtcConverter() : ValueConverter<DateTime, DateTime>(
        moment => moment.ToUniversalTime(),
        stored => DateTime.SpecifyKind(stored, DateTimeKind.Utc));
}
